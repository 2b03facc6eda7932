import type { Cursor } from '../../language/cursor.ts';
import { unexpected } from '../../language/parse.ts';
import type { Span } from '../../language/problem.ts';
import { readClauses, readUnit, readWord } from '../clauses.ts';
import { readEquals, readName, readNewName } from '../read-name.ts';
import type { GivenBlock, GivenDefault, GivenStatement } from '../sheet.ts';
import { type BlockSource, readStatements } from './block-source.ts';
import { createDisplay, createNamed } from './named.ts';

/** Reads a `given` block: what is measured or chosen. */
export function readGivenBlock(block: BlockSource): GivenBlock {
  const read = readStatements(block, (cursor, span) => readGiven(block, cursor, span));
  return { kind: 'given', line: block.line, ...read };
}

function readGiven(block: BlockSource, cursor: Cursor, span: Span): GivenStatement {
  const name = readNewName(cursor, 'the name of a given');
  readEquals(cursor);
  const value = readDefault(cursor);
  const clauses = readClauses(cursor, ['label', 'from', 'to', 'as', 'how', 'datum', 'source']);
  return {
    ...createNamed(block, name, span.to, clauses),
    value,
    display: createDisplay(clauses),
    ...(clauses.range === undefined ? {} : { range: clauses.range }),
    ...(clauses.how === undefined ? {} : { how: clauses.how }),
    ...(clauses.datum === undefined ? {} : { datum: clauses.datum }),
  };
}

function readDefault(cursor: Cursor): GivenDefault {
  const at = cursor.position();
  const first = /^(?:"|blank\b|pick\b)/.exec(cursor.source.slice(at, at + 6))?.[0];
  if (first === '"') return readText(cursor);
  if (first === 'blank') return readBlank(cursor);
  if (first === 'pick') return readPick(cursor);
  return readEntryText(cursor, at);
}

function readText(cursor: Cursor): GivenDefault {
  const token = cursor.take();
  return { type: 'text', value: token.type === 'text' ? token.value : '' };
}

function readBlank(cursor: Cursor): GivenDefault {
  cursor.take();
  const isList = () => {
    const token = cursor.peek();
    return token.type === 'word' && token.text === 'list';
  };
  if (isList()) {
    cursor.take();
    return { type: 'blank', list: true };
  }
  if (!isUnitNext(cursor)) return { type: 'blank', list: false };
  const unit = readUnit(cursor);
  const list = isList();
  if (list) cursor.take();
  return { type: 'blank', unit, list };
}

/** A plain number may be blank too: then a label, a clause or nothing follows. */
function isUnitNext(cursor: Cursor): boolean {
  const rest = cursor.source.slice(cursor.position(), cursor.end);
  return !/^(?:$|"|(?:from|to|as|how|datum|source)\s)/.test(rest);
}

function readPick(cursor: Cursor): GivenDefault {
  cursor.take();
  const row = cursor.take();
  if (row.type !== 'text') throw unexpected(row, 'the first cell of a row, in quotation marks');
  readWord(cursor, 'from');
  const table = readName(cursor, 'the name of a table');
  const dot = cursor.peek();
  if (dot.type !== 'symbol' || dot.text !== '.') return { type: 'pick', row: row.value, table };
  cursor.take();
  const column = readName(cursor, 'the name of a column').name;
  return { type: 'pick', row: row.value, table, column };
}

/** What a person would type stands up to the label or the first clause. */
const AFTER_ENTRY = /"|\s(?=(?:from|to|as|how|datum|source)(?![a-z0-9_]))|\s#|$/;

function readEntryText(cursor: Cursor, at: number): GivenDefault {
  const rest = cursor.source.slice(at, cursor.end);
  const text = rest.slice(0, AFTER_ENTRY.exec(rest)!.index).trimEnd();
  if (text === '')
    throw unexpected(cursor.peek(), 'a value, such as 3.212 ± 0.003 in, or "blank in"');
  cursor.moveTo(at + text.length);
  return { type: 'entry', text, from: at };
}
