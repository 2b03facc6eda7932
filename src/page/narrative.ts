import type { Token, Tokens } from 'marked';
import { type Child, h } from './element.ts';
import { decodeEntities } from './entities.ts';
import { hrefOf } from './link.ts';
import { createScrollBox } from './scroll-box.ts';

/** What the narrative of a sheet remembers from one stretch to the next. */
export interface NarrativeState {
  /** Level of the heading last written: no level is skipped on the way down. */
  level: number;
  /** True once the sheet's own title has been passed; the page shows it apart. */
  titled: boolean;
}

/**
 * The nodes for Markdown tokens. Every node is made here by name, so nothing that the Markdown
 * says can become markup: raw HTML is shown as the text that it is.
 * Mutates the state.
 */
export function createNarrative(tokens: readonly Token[], state: NarrativeState): Node[] {
  return tokens.flatMap((token) => createBlock(token as Tokens.Generic, state));
}

/** Inline Markdown: emphasis, code, links. */
export function createInline(tokens: readonly Token[] | undefined): Node[] {
  return (tokens ?? []).flatMap((token) => createSpan(token as Tokens.Generic));
}

function createBlock(token: Tokens.Generic, state: NarrativeState): Node[] {
  switch (token.type) {
    case 'space':
    case 'def':
      return [];
    case 'heading':
      return createHeading(token, state);
    case 'paragraph':
      return [h('p', {}, ...createInline(token.tokens))];
    case 'blockquote':
      return [h('blockquote', {}, ...createNarrative(token.tokens ?? [], state))];
    case 'list':
      return [createList(token as Tokens.List, state)];
    case 'code':
      return [createCode(token.text)];
    case 'hr':
      return [h('hr')];
    case 'table':
      return [createTable(token as Tokens.Table)];
    case 'html':
      return [h('p', {}, token.raw.trimEnd())];
    default:
      return createSpan(token);
  }
}

function createHeading(token: Tokens.Generic, state: NarrativeState): Node[] {
  if (!state.titled) {
    state.titled = true;
    return [];
  }
  state.level = Math.min(Math.max(token.depth, 2), state.level + 1, 6);
  const tag = `h${state.level}` as 'h2';
  return [h(tag, {}, ...createInline(token.tokens))];
}

function createList(token: Tokens.List, state: NarrativeState): HTMLElement {
  const items = token.items.map((item) => h('li', {}, ...createItem(item, state)));
  if (!token.ordered) return h('ul', {}, ...items);
  return h('ol', { start: token.start === 1 ? undefined : Number(token.start) }, ...items);
}

/** A tight list holds its text bare; `[ ]` at the start is told in a character. */
function createItem(item: Tokens.ListItem, state: NarrativeState): Node[] {
  const box = item.task ? [new Text(item.checked ? '☑ ' : '☐ ')] : [];
  return [...box, ...createNarrative(item.tokens, state)];
}

function createCode(text: string): HTMLElement {
  return createScrollBox('wide', 'Text of a block', h('pre', {}, h('code', {}, text)));
}

function createTable(token: Tokens.Table): HTMLElement {
  const cell = (tag: 'th' | 'td', one: Tokens.TableCell): HTMLElement =>
    h(
      tag,
      { scope: tag === 'th' && 'col', class: one.align === 'right' && 'number' },
      ...createInline(one.tokens),
    );
  const head = h('tr', {}, ...token.header.map((one) => cell('th', one)));
  const rows = token.rows.map((row) => h('tr', {}, ...row.map((one) => cell('td', one))));
  const table = h('table', {}, h('thead', {}, head), h('tbody', {}, ...rows));
  return createScrollBox('wide', 'Table', table);
}

function createSpan(token: Tokens.Generic): Node[] {
  switch (token.type) {
    case 'text':
      return token.tokens === undefined
        ? [new Text(decodeEntities(token.text))]
        : createInline(token.tokens);
    case 'escape':
      return [new Text(token.text)];
    case 'strong':
      return [h('strong', {}, ...createInline(token.tokens))];
    case 'em':
      return [h('em', {}, ...createInline(token.tokens))];
    case 'del':
      return [h('s', {}, ...createInline(token.tokens))];
    case 'codespan':
      return [h('code', {}, ...breakName(token.text))];
    case 'br':
      return [h('br')];
    case 'link':
      return createLink(token as Tokens.Link);
    case 'image':
      return [new Text(`[picture: ${decodeEntities(token.text)}]`)];
    default:
      return [new Text(token.raw)];
  }
}

/** A long name may go on in the next line behind a bracket or an underscore. */
function breakName(text: string): Child[] {
  return text.split(/(?<=[_(])(?=\w)/).flatMap((part, i) => (i === 0 ? [part] : [h('wbr'), part]));
}

/** A link to a sheet or to the web; any other address is not followed, and its words stay as text. */
function createLink(token: Tokens.Link): Node[] {
  const words: Child[] = createInline(token.tokens);
  const href = hrefOf(decodeEntities(token.href));
  if (href === undefined) return words as Node[];
  const outside = !href.startsWith('#');
  return [h('a', { href, rel: outside && 'noopener noreferrer external' }, ...words)];
}
