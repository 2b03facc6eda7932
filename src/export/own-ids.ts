import { listSvgTree, mapSvgTree, type SvgTree } from './svg-tree.ts';

const REFERENCE = /url\(#([^)]+)\)/g;

/**
 * The drawing with ids of its own, counted from 1: the plotting library counts over all that it has
 * drawn, and a file is to be the same whatever was drawn before it.
 */
export function countOwnIds(tree: SvgTree): SvgTree {
  const ids = listSvgTree(tree).flatMap(({ attributes }) => attributes.id ?? []);
  const fresh = new Map(ids.map((id, i) => [id, `part-${i + 1}`]));
  const rename = (id: string) => fresh.get(id) ?? id;
  return mapSvgTree(tree, (each) => ({
    ...each,
    attributes: Object.fromEntries(
      Object.entries(each.attributes).map(([name, value]) => [name, renameIn(name, value, rename)]),
    ),
  }));
}

function renameIn(name: string, value: string, rename: (id: string) => string): string {
  if (name === 'id') return rename(value);
  if (name.startsWith('aria-')) return value.split(' ').map(rename).join(' ');
  if (name === 'href') return value.startsWith('#') ? `#${rename(value.slice(1))}` : value;
  return value.replace(REFERENCE, (_, id: string) => `url(#${rename(id)})`);
}
