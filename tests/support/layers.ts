import { listImports, listOwnImports, type SourceTree } from './source-tree.ts';

/** Folders of src from the first to the last: each imports only from itself and those before it. */
export const ROOMS = [
  'units',
  'language',
  'trade',
  'drawing',
  'sheet',
  'graph',
  'chart',
  'job',
  'export',
  'page',
  'cli',
] as const;

/** The terminal stands last and still has no business with the page. */
const APART: ReadonlySet<string> = new Set(['cli page']);

/** Imports that go up, leave src, or stand in no room; a sentence each. */
export function findLayerBreaks(tree: SourceTree): readonly string[] {
  return [...tree].flatMap(([path, text]) =>
    listOwnImports(path, text).flatMap((target) => judgeImport(path, target) ?? []),
  );
}

/** Data is in no room: whoever needs it may read it. */
function isData(target: string): boolean {
  return target.startsWith('shared/') && target.endsWith('.json');
}

function judgeImport(path: string, target: string): string | undefined {
  if (isData(target)) return undefined;
  const from = roomOf(path);
  const to = roomOf(target);
  if (rank(from) < 0) return `${path} stands in no room`;
  if (rank(to) < 0) return `${path} imports ${target}, which stands in no room`;
  if (rank(to) > rank(from)) return `${path} imports ${target}: ${from} comes before ${to}`;
  if (APART.has(`${from} ${to}`)) return `${path} imports ${target}: ${from} does without ${to}`;
  return undefined;
}

/** `src/units/unit.ts` → `units`; '' outside src and for files straight in it. */
function roomOf(path: string): string {
  const parts = path.split('/');
  return parts[0] === 'src' && parts.length > 2 ? parts[1]! : '';
}

function rank(room: string): number {
  return ROOMS.indexOf(room as (typeof ROOMS)[number]);
}

/** Files of which a package may be imported by those of one room only. */
export function findStrayImports(tree: SourceTree, name: string, room: string): readonly string[] {
  return [...tree]
    .filter(([path]) => roomOf(path) !== room)
    .filter(([path, text]) => listImports(path, text).some((written) => isPackage(written, name)))
    .map(([path]) => `${path} imports ${name}, which is for src/${room}`);
}

function isPackage(written: string, name: string): boolean {
  return written === name || written.startsWith(`${name}/`);
}

/** Loops of imports, each as `a → b → a`, each loop once. */
export function findCycles(tree: SourceTree): readonly string[] {
  const cycles: string[] = [];
  const done = new Set<string>();
  for (const path of tree.keys()) visit(path, [], { tree, done, cycles });
  return cycles;
}

interface Search {
  readonly tree: SourceTree;
  readonly done: Set<string>;
  readonly cycles: string[];
}

/** Mutates `search`: notes loops and the files that need no second visit. */
function visit(path: string, trail: readonly string[], search: Search): void {
  const met = trail.indexOf(path);
  if (met >= 0) search.cycles.push([...trail.slice(met), path].join(' → '));
  if (met >= 0 || search.done.has(path)) return;
  const targets = listOwnImports(path, search.tree.get(path) ?? '');
  for (const target of targets) visit(target, [...trail, path], search);
  search.done.add(path);
}
