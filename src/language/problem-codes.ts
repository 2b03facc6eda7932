import { didYouMean } from '../units/nearest.ts';

/**
 * Every problem there is, each declared once: the sentence made from its details.
 * Messages are lower-case fragments that name the offender, both sides and the cure.
 */
export const PROBLEMS = {
  // Reading text.
  'unreadable-character': (d: { found: string }) =>
    `cannot read "${d.found}" here; formulas hold names, numbers with units and + - * / ^ ( ) [ ]`,
  'unclosed-text': () => 'this text has no closing quotation mark; add one at its end',
  'malformed-number': (d: { message: string }) => d.message,
  'ambiguous-number': (d: { message: string }) => d.message,
  'unknown-unit': (d: { message: string }) => d.message,
  'unexpected-end': (d: { expected: string }) => `expected ${d.expected}, but the line ends here`,
  'unexpected-word': (d: { found: string; expected: string }) =>
    `expected ${d.expected}, found ${d.found}`,
  'chained-comparison': () =>
    'one comparison at a time: write "a < b and b < c" instead of "a < b < c"',
  'too-deep': (d: { limit: number }) =>
    `more than ${d.limit} brackets or signs inside one another; split the formula into named parts`,
  'too-long': (d: { limit: number }) =>
    `more than ${d.limit} parts in one formula; split it into named parts`,
  'reserved-name': (d: { name: string; role: string }) =>
    `"${d.name}" is ${d.role} and cannot name a value; choose another name`,
  'misspelt-name': (d: { name: string; cure: string }) =>
    `"${d.name}" is no name: names are lower-case letters, digits and underscores, such as ${d.cure}`,

  // Blocks and their statements.
  'unclosed-block': (d: { kind: string }) =>
    `this ${d.kind} block is never closed; end it with a line of three backticks`,
  'unknown-clause': (d: { found: string; allowed: string }) =>
    `"${d.found}" is not understood here; after the value may stand ${d.allowed}`,
  'repeated-clause': (d: { clause: string }) => `"${d.clause}" is given twice; keep one of them`,
  'missing-line': (d: { kind: string; example: string }) =>
    `this ${d.kind} block is empty; write for example: ${d.example}`,
  'missing-name': (d: { kind: string; example: string }) =>
    `a ${d.kind} needs a name after its word; write for example: ${d.example}`,
  'unclear-axis': (d: { found: string; x: string; y: string }) =>
    `a mark of ${d.found} fits neither axis (${d.x} across, ${d.y} up); say "on x" or "on y" only where both are alike`,
  'range-order': (d: { from: string; to: string }) =>
    `the range from ${d.from} to ${d.to} leaves nothing in between; write the smaller end first`,
  'unknown-drawing': (d: { name: string; near: readonly string[] }) =>
    `no drawing is called ${d.name}${didYouMean(d.near)}`,
  'unknown-slot': (d: { drawing: string; slot: string; near: readonly string[] }) =>
    `drawing ${d.drawing} has no ${d.slot}${didYouMean(d.near)}`,
  'repeated-slot': (d: { drawing: string; slot: string }) =>
    `drawing ${d.drawing} is given its ${d.slot} twice; keep one of them`,
  'missing-slot': (d: { drawing: string; slots: string }) =>
    `drawing ${d.drawing} still needs ${d.slots}`,
  'mixed-figures': (d: { first: string; odd: string }) =>
    `a table of figures holds lists or single values, not both: ${d.first} against ${d.odd}; give each a table of its own`,
  'missing-range': (d: { name: string }) =>
    `${d.name} has no range to search or draw from; add "from A to B"`,
  'nothing-varies': (d: { name: string }) =>
    `nothing that ${d.name} hangs on has a range; add a line such as: vary finger_reading from 3.1 in to 3.3 in`,
  'ragged-row': (d: { cells: number; columns: number }) =>
    `this row has ${count(d.cells, 'cell')}, the header has ${count(d.columns, 'column')}; a text with a comma stands in quotation marks`,
  'bad-header': (d: { found: string }) =>
    `"${d.found}" is no column name; write it in lower case with a unit after it, such as thickness (in)`,
  'bad-cell': (d: { found: string; column: string; message: string }) =>
    `"${d.found}" in column ${d.column}: ${d.message}`,
  'unclosed-cell': () => 'a cell opened with a quotation mark is never closed',

  // Names and kinds.
  'unknown-name': (d: { name: string; near: readonly string[] }) =>
    `no value is called ${d.name}${didYouMean(d.near)}`,
  'unknown-function': (d: { name: string; near: readonly string[] }) =>
    `no function is called ${d.name}${didYouMean(d.near)}`,
  'unknown-field': (d: { owner: string; field: string; near: readonly string[] }) =>
    `${d.owner} has no column ${d.field}${didYouMean(d.near)}`,
  'unknown-row': (d: { table: string; row: string; near: readonly string[] }) =>
    `${d.table} has no row "${d.row}"${didYouMean(d.near.map((row) => `"${row}"`))}`,
  'repeated-row': (d: { table: string; row: string }) =>
    `${d.table} has two rows "${d.row}", and a pick could not tell them apart; name one of them otherwise`,
  'unknown-sheet': (d: { name: string; near: readonly string[] }) =>
    `no sheet is called ${d.name}${didYouMean(d.near)}`,
  'unknown-given': (d: { name: string; sheet: string; near: readonly string[] }) =>
    `sheet ${d.sheet} has no given called ${d.name}${didYouMean(d.near)}`,
  'duplicate-name': (d: { name: string; first: string }) =>
    `${d.name} is already named at ${d.first}; give one of the two another name`,
  'duplicate-sheet': (d: { name: string }) =>
    `two sheets are called ${d.name}; rename one of the files`,
  loop: (d: { path: readonly string[] }) =>
    `these values wait for one another in a loop: ${d.path.join(' → ')}; break it at one of them`,
  'not-a-given': (d: { doing: string; name: string; role: string }) =>
    `${d.doing} a given; ${d.name} is ${d.role}`,
  'wrong-kind': (d: { found: string; expected: string; where: string }) =>
    `${d.where} needs ${d.expected}, not ${d.found}`,
  'dimension-mismatch': (d: { action: string; left: string; right: string; cure?: string }) =>
    `cannot ${d.action} ${d.left} ${joiner(d.action)} ${d.right}${d.cure === undefined ? '' : `; ${d.cure}`}`,
  'wrong-dimension': (d: { where: string; expected: string; found: string }) =>
    `${d.where} needs ${d.expected}, not ${d.found}`,
  'wrong-display': (d: { name: string; found: string; unit: string; unitDimension: string }) =>
    `${d.name} is ${d.found} and cannot be shown in ${d.unit} (${d.unitDimension})`,
  'exponent-not-plain': (d: { found: string }) =>
    `an exponent is a plain number, not ${d.found}; divide it by its unit first`,
  'exponent-not-constant': (d: { base: string }) =>
    `a power of ${d.base} needs an exponent written as a number, so that its unit is known`,
  'argument-count': (d: { name: string; takes: string; given: number }) =>
    `${d.name} takes ${d.takes}, ${count(d.given, 'value')} given`,
  'unknown-argument': (d: { name: string; argument: string; near: readonly string[] }) =>
    `${d.name} has no argument ${d.argument}${didYouMean(d.near)}`,
  'repeated-argument': (d: { name: string; argument: string }) =>
    `${d.name} is given its argument ${d.argument} twice`,
  'list-length': (d: { left: string; right: string }) =>
    `lists are worked element by element and must be equally long: ${d.left} against ${d.right}`,

  // Working with numbers.
  'division-by-zero': (d: { divisor: string }) => `division by zero: ${d.divisor}`,
  'out-of-domain': (d: { sentence: string }) => d.sentence,
  'not-a-power': (d: { base: string; exponent: string }) =>
    `${d.base} to the power ${d.exponent} is not a real number`,
  overflow: () =>
    'the result is too large to be a number; look for a wrong unit or a slipped digit',
  waiting: (d: { name: string; why: string }) => `waits for ${d.name}, which ${d.why}`,

  // What a person types.
  'entered-twice': (d: { name: string }) => `${d.name} is entered twice; keep one of the entries`,
  'entered-result': (d: { name: string; sheet: string }) =>
    `${d.name} is worked out on sheet ${d.sheet} and cannot be entered; enter what it is worked from`,
  'unreadable-entry': (d: { message: string }) => d.message,
  'unreadable-job': (d: { message: string }) => d.message,
  'name-in-entry': (d: { name: string; example: string }) =>
    `"${d.name}" is not a number or a unit; an entry holds numbers only, such as ${d.example}`,
  'entry-too-long': (d: { length: number; limit: number }) =>
    `the entry has ${d.length} characters; up to ${d.limit} are read`,
  'entry-dimension': (d: { typed: string; found: string; expected: string; example: string }) =>
    `${d.typed} is ${d.found}; ${d.expected} such as ${d.example} belongs here`,
  'mixed-units': (d: { message: string }) => d.message,
  'bad-tolerance': (d: { message: string }) => d.message,
} as const;

export type ProblemCode = keyof typeof PROBLEMS;

/** What the sentence of a problem is made from. */
export type Details<C extends ProblemCode> =
  Parameters<(typeof PROBLEMS)[C]> extends [infer D] ? D : undefined;

function joiner(action: string): string {
  return { add: 'to', subtract: 'from', compare: 'with' }[action] ?? 'and';
}

function count(n: number, noun: string): string {
  return `${n} ${noun}${n === 1 ? '' : 's'}`;
}
