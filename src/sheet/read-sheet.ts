import { lexer, type Token, type Tokens } from 'marked';
import { fail, type Problem } from '../language/problem.ts';
import { BLOCK_KINDS, isBlockKind } from './blocks/block-kinds.ts';
import type { BlockSource } from './blocks/block-source.ts';
import { createPlaces, type Places, placeProblem } from './places.ts';
import type { Block, Part, Sheet } from './sheet.ts';

/**
 * Reads a sheet: Markdown whose fenced blocks are live where their first word names a block kind.
 * What cannot be read becomes a problem with its place; the rest of the sheet stands.
 *
 * @param source text of the file; any line ends
 * @param file its name, for places; the sheet is called by it, without folder and ending
 */
export function readSheet(source: string, file: string): Sheet {
  const text = source.replaceAll(/\r\n?/g, '\n').replace(/^\uFEFF/, '');
  const name = file.replace(/^.*[\\/]/, '').replace(/\.md$/, '');
  const number = /^\d+/.exec(name)?.[0];
  const tokens = lexer(text);
  const places = createPlaces(text, file);
  const { parts, problems } = readParts(text, tokens, places);
  return {
    name,
    file,
    source: text,
    places,
    number: number === undefined ? undefined : Number(number),
    title: titleOf(tokens) ?? name,
    parts,
    problems,
  };
}

function titleOf(tokens: readonly Token[]): string | undefined {
  return tokens.find((token): token is Tokens.Heading => token.type === 'heading')?.text;
}

function readParts(source: string, tokens: readonly Token[], places: Places) {
  const parts: Part[] = [];
  const problems: Problem[] = [];
  let offset = 0;
  for (const token of tokens) {
    const block = maybeBlock(source, token, offset, places);
    if (block === undefined) addNarrative(parts, token, places(offset).line);
    else {
      parts.push(block);
      problems.push(...block.problems, ...unclosed(token, block, offset, places));
    }
    offset += token.raw.length;
  }
  return { parts, problems };
}

/** Mutates `parts`: neighbouring tokens of narrative stay together. */
function addNarrative(parts: Part[], token: Token, line: number): void {
  const last = parts.at(-1);
  if (last?.kind === 'narrative')
    parts[parts.length - 1] = { ...last, tokens: [...last.tokens, token] };
  else parts.push({ kind: 'narrative', tokens: [token], line });
}

const FENCE = /^ {0,3}(`{3,}|~{3,})[^\S\n]*([^\s`]*)[^\S\n]*([^\n`]*)/;

function maybeBlock(
  source: string,
  token: Token,
  offset: number,
  places: Places,
): Block | undefined {
  if (token.type !== 'code') return undefined;
  const fence = FENCE.exec(token.raw);
  const word = fence?.[2] ?? '';
  if (fence === null || !isBlockKind(word)) return undefined;
  return BLOCK_KINDS[word](locate(source, token.raw, offset, fence, places));
}

function locate(
  source: string,
  raw: string,
  offset: number,
  fence: RegExpExecArray,
  places: Places,
): BlockSource {
  const opening = offset + fence[0].length;
  const newline = raw.indexOf('\n');
  const from = newline < 0 ? offset + raw.length : offset + newline + 1;
  const closing = closingFence(raw, fence[1]!);
  const to = closing === undefined ? offset + raw.length : offset + closing;
  return {
    source,
    places,
    info: { from: opening - fence[3]!.length, to: opening },
    body: { from, to: Math.max(from, to) },
    line: places(offset).line,
  };
}

/** Offset of the closing fence in the raw block. */
function closingFence(raw: string, opening: string): number | undefined {
  const closing = new RegExp(`\\n( {0,3}${opening[0]}{${opening.length},}[^\\S\\n]*\\n*)$`);
  const found = closing.exec(raw);
  return found === null ? undefined : found.index + 1;
}

function unclosed(token: Token, block: Block, offset: number, places: Places): Problem[] {
  const opening = FENCE.exec(token.raw)![1]!;
  if (closingFence(token.raw, opening) !== undefined) return [];
  const where = { from: offset, to: offset + token.raw.indexOf('\n') };
  return [placeProblem(fail('unclosed-block', where, { kind: block.kind }), places)];
}
