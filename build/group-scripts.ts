import type { Rolldown } from 'vite';

type ModuleLookUp = (id: string) => {
  readonly isEntry: boolean;
  readonly importers: readonly string[];
} | null;

/**
 * One script of all that the first results wait for. Cut up by what the later scripts share with it,
 * it would be a tenth larger on the way.
 */
function createFirstScript(): (id: string, look: ModuleLookUp) => string | null {
  const known = new Map<string, boolean>();
  const isFirst = (id: string, look: ModuleLookUp, seen: Set<string>): boolean => {
    if (known.get(id) || seen.has(id)) return known.get(id) ?? false;
    seen.add(id);
    const found = look(id);
    const first =
      found !== null &&
      (found.isEntry || found.importers.some((importer) => isFirst(importer, look, seen)));
    if (first) known.set(id, true);
    return first;
  };
  return (id, look) => (isFirst(id, look, new Set()) ? 'first' : null);
}

/** How a build cuts its scripts up; the copy in one file is not cut at all. */
export function groupScripts(mode: string): Pick<Rolldown.RolldownOptions, 'output'> {
  if (mode === 'file') return {};
  const nameOf = createFirstScript();
  const groups = [
    {
      name: (id: string, context: { getModuleInfo: ModuleLookUp }) =>
        nameOf(id, (one) => context.getModuleInfo(one)),
    },
  ];
  return { output: { codeSplitting: { groups } } };
}
