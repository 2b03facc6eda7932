import type { Loaded } from './load-book.ts';
import { formatProblem } from './problem-record.ts';
import { listResults } from './record-results.ts';
import type { SolveRecord } from './solve-record.ts';

/** The text of one that cannot be told yet says so itself. */
const VERDICTS = { pass: 'passes. ', fail: 'FAILS. ', unknown: '' } as const;

/** A worked sheet as lines for people: results, checks, problems. */
export function formatRecord({ book, sheet }: Loaded, record: SolveRecord): string {
  const results = listResults(book, sheet.name).map(
    ({ name, label }) => [label, record.results[name]!.text] as const,
  );
  const checks = book.checks
    .filter((check) => check.sheet === sheet.name)
    .map(({ statement }, i) => {
      const { verdict, text } = record.checks[i]!;
      return [statement.label, `${VERDICTS[verdict]}${text}`] as const;
    });
  const sections = [
    formatSection('Results', alignPairs(results)),
    formatSection('Checks', alignPairs(checks)),
    formatSection('Problems', record.problems.map(formatProblem)),
  ];
  return `${[sheet.title, ...sections.filter((section) => section !== '')].join('\n\n')}\n`;
}

function formatSection(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : [title, ...lines.map((line) => `  ${line}`)].join('\n');
}

const LINE = 100;
/** A label longer than this pushes its own text on and no other. */
const LABEL = 44;

/** Two columns, the second aligned and broken at words to fit a line. */
function alignPairs(pairs: readonly (readonly [string, string])[]): readonly string[] {
  const widths = pairs.map(([label]) => label.length).filter((width) => width <= LABEL);
  const width = Math.max(0, ...widths);
  return pairs.flatMap(([label, text]) => {
    const [first = '', ...others] = breakWords(text, LINE - width - 4);
    const hanging = others.map((line) => `${' '.repeat(width)}  ${line}`);
    return label.length > width
      ? [label, `${' '.repeat(width)}  ${first}`, ...hanging]
      : [`${label.padEnd(width)}  ${first}`, ...hanging];
  });
}

/** Lines of whole words; a word that is longer than a line has one to itself. */
function breakWords(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else lines.push(word);
  }
  return lines;
}
