import { fail, type Problem } from '../language/problem.ts';
import type { Expression } from '../language/tree.ts';
import { namesIn } from '../language/walk.ts';
import { nearest } from '../units/nearest.ts';
import { formatPlace } from './places.ts';
import type {
  Block,
  CheckStatement,
  FromBlock,
  FromStatement,
  GivenStatement,
  Named,
  Sheet,
  StackStatement,
  TableStatement,
  WorkStatement,
} from './sheet.ts';

/** A statement that names a value, numbered, before anything is known of its kind. */
export type Draft = { readonly index: number; readonly sheet: Sheet } & DraftRole;

export type DraftRole =
  | { readonly role: 'given'; readonly statement: GivenStatement }
  | { readonly role: 'from'; readonly statement: FromStatement; readonly block: FromBlock }
  | { readonly role: 'work'; readonly statement: WorkStatement }
  | { readonly role: 'stack'; readonly statement: StackStatement }
  | { readonly role: 'table'; readonly statement: TableStatement };

export interface CheckDraft {
  readonly sheet: Sheet;
  readonly statement: CheckStatement;
}

export interface Drafts {
  readonly drafts: readonly Draft[];
  readonly checks: readonly CheckDraft[];
  /** By the sheet's name, then by the value's. */
  readonly names: ReadonlyMap<string, ReadonlyMap<string, number>>;
  readonly problems: readonly Problem[];
}

/** Numbers all named values of all sheets; a name that is taken already is a problem. */
export function draftCells(sheets: readonly Sheet[]): Drafts {
  const drafts: Draft[] = [];
  const checks: CheckDraft[] = [];
  const names = new Map<string, Map<string, number>>();
  const problems: Problem[] = [];
  for (const sheet of sheets) {
    if (names.has(sheet.name)) {
      problems.push(duplicateSheet(sheet));
      continue;
    }
    const own = new Map<string, number>();
    names.set(sheet.name, own);
    for (const role of sheet.parts.flatMap(rolesOf)) {
      if (role.role === 'check') checks.push({ sheet, statement: role.statement });
      else addDraft(role, sheet, { drafts, own, problems });
    }
  }
  return { drafts, checks, names, problems };
}

function duplicateSheet(sheet: Sheet): Problem {
  const place = { file: sheet.file, line: 1, column: 1 };
  return { ...fail('duplicate-sheet', { from: 0, to: 0 }, { name: sheet.name }), place };
}

interface Into {
  readonly drafts: Draft[];
  readonly own: Map<string, number>;
  readonly problems: Problem[];
}

/** Mutates what it adds to. */
function addDraft(role: DraftRole, sheet: Sheet, { drafts, own, problems }: Into): void {
  const { statement } = role;
  const taken = own.get(statement.name);
  if (taken === undefined) {
    own.set(statement.name, drafts.length);
    drafts.push({ index: drafts.length, sheet, ...role });
    return;
  }
  const first = formatPlace(drafts[taken]!.statement.place);
  problems.push(placed('duplicate-name', statement, { name: statement.name, first }));
}

function placed(
  code: 'duplicate-name',
  { from, to, place, name }: Named,
  details: { name: string; first: string },
): Problem {
  return { ...fail(code, { from, to }, details), place, cell: name };
}

type Role = DraftRole | { readonly role: 'check'; readonly statement: CheckStatement };

function rolesOf(part: Block | { readonly kind: 'narrative' }): readonly Role[] {
  switch (part.kind) {
    case 'given':
      return part.statements.map((statement) => ({ role: 'given', statement }));
    case 'from':
      return part.statements.map((statement) => ({ role: 'from', statement, block: part }));
    case 'work':
      return part.statements.map((statement) => ({ role: 'work', statement }));
    case 'check':
      return part.statements.map((statement) => ({ role: 'check', statement }));
    case 'stack':
      return part.stack === undefined ? [] : [{ role: 'stack', statement: part.stack }];
    case 'table':
      return part.table === undefined ? [] : [{ role: 'table', statement: part.table }];
    case 'narrative':
    case 'chart':
    case 'drawing':
    case 'find':
    case 'figures':
    case 'practice':
    case 'steps':
    case 'caution':
      return [];
    default:
      return part satisfies never;
  }
}

/** The cells that a draft reads, by their numbers; names that do not exist are told by the checker. */
export function inputsOf(draft: Draft, { names }: Drafts): readonly number[] {
  if (draft.role === 'from') {
    const origin = names.get(draft.block.sheet)?.get(draft.statement.origin);
    return origin === undefined ? [] : [origin];
  }
  const own = names.get(draft.sheet.name)!;
  return namesOf(draft).flatMap((name) => own.get(name) ?? []);
}

function namesOf(draft: Exclude<Draft, { role: 'from' }>): readonly string[] {
  switch (draft.role) {
    case 'given': {
      const { value } = draft.statement;
      return value.type === 'pick' ? [value.table.name] : [];
    }
    case 'work': {
      const { expression, valid } = draft.statement;
      const needed = namesIn(expression);
      return valid === undefined ? needed : [...new Set([...needed, ...namesIn(valid.condition)])];
    }
    case 'stack':
      return [...new Set(draft.statement.terms.flatMap((term) => namesIn(term.expression)))];
    case 'table':
      return [];
    default:
      return draft satisfies never;
  }
}

/** The names that a check needs, its own subject first. */
export function namesOfCheck({ subject, least, most, equals }: CheckStatement): readonly string[] {
  const trees: readonly (Expression | undefined)[] = [subject, least, most, equals];
  return [...new Set(trees.flatMap((tree) => (tree === undefined ? [] : namesIn(tree))))];
}

/** Names of one sheet that are like a word. */
export function nearNames(drafts: Drafts, sheet: string, word: string): readonly string[] {
  return nearest(word, [...(drafts.names.get(sheet)?.keys() ?? [])]);
}
