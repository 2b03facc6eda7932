import { type ByName, type Job, own, type Variant, withEntry, withNested } from './record.ts';

/** What a variant comes to: the job with all its differences in, or why there is none. */
export type Resolved =
  | { readonly state: 'resolved'; readonly job: Job }
  | { readonly state: 'broken'; readonly sentence: string };

export function findVariant({ variants }: Job, name: string): Variant | undefined {
  return variants.find((variant) => variant.name === name);
}

/**
 * The job as it would be with a variant: the differences of what it builds on first, its own over them.
 * A base that is no longer there, or that builds on the variant itself, is told and not guessed at.
 */
export function resolveVariant(job: Job, name: string): Resolved {
  const chain = listChain(job, name);
  if (typeof chain === 'string') return { state: 'broken', sentence: chain };
  return { state: 'resolved', job: chain.reduce(applyVariant, job) };
}

/** The variant and what it builds on, the lowest first; a sentence where that leads nowhere. */
function listChain(job: Job, name: string): readonly Variant[] | string {
  const chain: Variant[] = [];
  for (let wanted: string | undefined = name; wanted !== undefined; ) {
    const variant = findVariant(job, wanted);
    const above = chain[0];
    if (variant === undefined) {
      return above === undefined
        ? `There is no proposal "${name}" in this job.`
        : `"${above.name}" builds on "${wanted}", which is no longer there: build it on the job or on another proposal.`;
    }
    if (chain.includes(variant)) {
      const path = [wanted, ...chain.map((each) => each.name)];
      return `These proposals build on one another in a circle: ${path.join(', ')}. Build one of them on the job.`;
    }
    chain.unshift(variant);
    wanted = variant.base;
  }
  return chain;
}

function applyVariant(job: Job, { entries }: Variant): Job {
  return listDifferences(entries).reduce(
    (changed, { sheet, given, text }) => withEntry(changed, sheet, given, { text }),
    job,
  );
}

/** One thing that a variant has different. */
export interface Difference {
  readonly sheet: string;
  readonly given: string;
  readonly text: string;
}

export function listDifferences(entries: Variant['entries']): readonly Difference[] {
  return Object.entries(entries).flatMap(([sheet, own]) =>
    Object.entries(own).map(([given, text]) => ({ sheet, given, text })),
  );
}

/** The job with one more variant that has nothing different yet; its name is made unlike the others. */
export function withVariant(job: Job, wanted: string, base?: string): Job {
  const name = freshName(job, wanted);
  const variant: Variant = { name, ...(base === undefined ? {} : { base }), entries: {} };
  return { ...job, variants: [...job.variants, variant] };
}

/** `Proposal`, `Proposal 2`, `Proposal 3` … */
export function freshName(job: Job, wanted: string): string {
  const start = wanted.trim() === '' ? 'Proposal' : wanted.trim();
  for (let i = 1; ; i += 1) {
    const name = i === 1 ? start : `${start} ${i}`;
    if (findVariant(job, name) === undefined) return name;
  }
}

/** The job with one difference set; `undefined` takes it back to what the variant builds on. */
export function withDifference(
  job: Job,
  name: string,
  sheet: string,
  given: string,
  text: string | undefined,
): Job {
  return changeVariant(job, name, (variant) => ({
    ...variant,
    entries: withNested(variant.entries, sheet, given, text),
  }));
}

/** The job with a variant called otherwise; those that build on it follow. */
export function withVariantNamed(job: Job, name: string, wanted: string): Job {
  const others = { ...job, variants: job.variants.filter((each) => each.name !== name) };
  const fresh = freshName(others, wanted);
  return {
    ...job,
    variants: job.variants.map((each) => ({
      ...each,
      name: each.name === name ? fresh : each.name,
      ...(each.base === name ? { base: fresh } : {}),
    })),
  };
}

/** The job with a variant built on another, or with `undefined` on the job itself. */
export function withBase(job: Job, name: string, base: string | undefined): Job {
  return changeVariant(job, name, ({ base: _, ...rest }) =>
    base === undefined ? rest : { ...rest, base },
  );
}

/** What a variant can be built on without going round in a circle. */
export function listBases(job: Job, name: string): readonly string[] {
  return job.variants
    .map((variant) => variant.name)
    .filter((base) => base !== name && !buildsOn(job, base, name));
}

function buildsOn(job: Job, name: string, sought: string): boolean {
  const chain = listChain(job, name);
  return typeof chain === 'string' || chain.some((variant) => variant.name === sought);
}

/**
 * The job without a variant. What builds on it takes its differences over, so that nothing that was
 * compared comes to anything else.
 */
export function withoutVariant(job: Job, name: string): Job {
  const gone = findVariant(job, name);
  if (gone === undefined) return job;
  const variants = job.variants
    .filter((variant) => variant !== gone)
    .map((variant) => (variant.base === name ? joinVariants(gone, variant) : variant));
  return { ...job, variants };
}

function joinVariants(below: Variant, { name, entries }: Variant): Variant {
  const { base } = below;
  return {
    name,
    ...(base === undefined ? {} : { base }),
    entries: listDifferences(entries).reduce<ByName<ByName<string>>>(
      (joined, { sheet, given, text }) => withNested(joined, sheet, given, text),
      below.entries,
    ),
  };
}

/**
 * Makes a variant the job's: what it has different is entered in the job, and it goes. What builds on it
 * builds on the job from now on; all others keep their differences.
 */
export function adoptVariant(job: Job, name: string): Resolved {
  const resolved = resolveVariant(job, name);
  if (resolved.state === 'broken') return resolved;
  const variants = job.variants
    .filter((variant) => variant.name !== name)
    .map(({ base, ...rest }) => (base === undefined || base === name ? rest : { ...rest, base }));
  return { state: 'resolved', job: { ...resolved.job, variants } };
}

function changeVariant(job: Job, name: string, change: (variant: Variant) => Variant): Job {
  const variants = job.variants.map((each) => (each.name === name ? change(each) : each));
  return { ...job, variants };
}

/** What a variant has different for one given, if anything. */
export function differenceIn(
  { entries }: Variant,
  sheet: string,
  given: string,
): string | undefined {
  return own(own(entries, sheet) ?? {}, given);
}
