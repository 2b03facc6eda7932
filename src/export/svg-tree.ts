/** An SVG element apart from any document: what is written is the same wherever it was drawn. */
export interface SvgTree {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (SvgTree | string)[];
}

/** Takes a drawing out of its document. Comments and what is neither element nor text are left. */
export function readSvgTree(element: Element): SvgTree {
  const attributes = [...element.attributes].map(({ name, value }) => [name, value] as const);
  const children = [...element.childNodes].flatMap((child): (SvgTree | string)[] => {
    if (child.nodeType === 1) return [readSvgTree(child as Element)];
    return child.nodeType === 3 ? [child.textContent ?? ''] : [];
  });
  return {
    name: element.localName,
    attributes: Object.fromEntries(attributes),
    children: children.filter((child) => child !== ''),
  };
}

/** The tree with each element changed, from the leaves up. */
export function mapSvgTree(tree: SvgTree, change: (tree: SvgTree) => SvgTree): SvgTree {
  const children = tree.children.map((child) =>
    typeof child === 'string' ? child : mapSvgTree(child, change),
  );
  return change({ ...tree, children });
}

/** Every element of the tree, the root first. */
export function listSvgTree(tree: SvgTree): readonly SvgTree[] {
  return [
    tree,
    ...tree.children.flatMap((child) => (typeof child === 'string' ? [] : listSvgTree(child))),
  ];
}

/** XML of the tree; attributes in the order of the alphabet. */
export function formatSvgTree({ name, attributes, children }: SvgTree): string {
  const list = Object.keys(attributes)
    .sort()
    .map((key) => ` ${key}="${escapeXml(attributes[key]!)}"`)
    .join('');
  if (children.length === 0) return `<${name}${list}/>`;
  const inside = children.map((child) =>
    typeof child === 'string' ? escapeXml(child) : formatSvgTree(child),
  );
  return `<${name}${list}>${inside.join('')}</${name}>`;
}

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** Text for XML: what XML 1.0 cannot hold at all is left out. */
export function escapeXml(text: string): string {
  return (
    text
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what XML 1.0 forbids.
      .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
      .replace(/[&<>"]/g, (character) => ESCAPES[character]!)
  );
}
