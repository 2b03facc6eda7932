import type { Sheet } from '../sheet/sheet.ts';
import type { ComparedRecord, CompareRecord } from './compare-record.ts';
import { formatProblem } from './problem-record.ts';

/** Columns side by side as lines for people: each result, then a line a column with its difference. */
export function formatCompared({ title }: Sheet, record: CompareRecord): string {
  const names = record.columns.map(({ name }) => name);
  const width = Math.max(...names.map((name) => name.length));
  const all = Object.values(record.results);
  const different = all.filter(({ differs }) => differs);
  const same = all.filter(({ differs }) => !differs);
  const sections = [
    title,
    ...different.map((one) => formatOne(one, names, width)),
    formatSame(same),
    formatTroubles(record),
  ];
  return `${sections.filter((section) => section !== '').join('\n\n')}\n`;
}

function formatOne(
  { label, texts, differences }: ComparedRecord,
  names: readonly string[],
  width: number,
): string {
  const lines = names.map((name, i) => {
    const difference = differences[i] ?? '';
    return `  ${name.padEnd(width)}  ${texts[i]!}${difference === '' ? '' : `  (${difference})`}`;
  });
  return [label, ...lines].join('\n');
}

function formatSame(same: readonly ComparedRecord[]): string {
  if (same.length === 0) return '';
  return [
    'The same in every column',
    ...same.map(({ label, texts }) => `  ${label}: ${texts[0]!}`),
  ].join('\n');
}

function formatTroubles({ columns, problems }: CompareRecord): string {
  const own = columns.flatMap(({ name, problems: faults }) =>
    faults.map((fault) => `  ${name}: ${fault}`),
  );
  const lines = [...own, ...problems.map((problem) => `  ${formatProblem(problem)}`)];
  return lines.length === 0 ? '' : ['Problems', ...lines].join('\n');
}
