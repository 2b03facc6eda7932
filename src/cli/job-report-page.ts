import { escapeXml } from '../export/svg-tree.ts';
import type { SheetReport } from './job-report-sheet.ts';

export interface JobReport {
  readonly title: string;
  readonly vehicle: string;
  /** What is to be known before any of it is used. */
  readonly amiss: readonly string[];
  readonly sheets: readonly SheetReport[];
}

const STYLE = `@page{margin:16mm 15mm}
body{max-width:52rem;margin:2rem auto;padding:0 1rem;font:1rem/1.5 Georgia,serif;color:#1c2529;overflow-wrap:anywhere}
table{width:100%;border-collapse:collapse;margin:.4rem 0 1.4rem;font:.92rem/1.4 Arial,sans-serif}
caption{text-align:left;font-weight:700;padding:.3rem 0}
th,td{padding:.25rem .8rem .25rem 0;border-bottom:1px solid #d9d3c4;text-align:left;vertical-align:top;width:33%}
tr{break-inside:avoid}h1,h2,caption{break-after:avoid}
.amiss{border-left:6px solid #9c3a12;padding:.4rem 1rem}.fail td:nth-child(2){font-weight:700;color:#9c3a12}
.note{white-space:pre-wrap}.sign{margin-top:2.5rem;border-top:1px solid #1c2529;padding-top:.2rem;width:60%}`;

const VERDICTS: Readonly<Record<string, string>> = {
  pass: 'passes',
  fail: 'FAILS',
  unknown: 'cannot be told',
};

/** The record of a job as a page: no script, nothing from elsewhere, and a policy that says so. */
export function formatReport({ title, vehicle, amiss, sheets }: JobReport): string {
  const name = escapeXml(vehicle === '' ? title : `${vehicle}: ${title}`);
  const body = [
    `<h1>${name}</h1>`,
    amiss.length === 0 ? '' : formatAmiss(amiss),
    sheets.length === 0 ? '<p>Nothing has been entered yet.</p>' : '',
    ...sheets.map(formatSheet),
  ];
  return `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${name}</title>
<style>${STYLE}</style>
</head>
<body>
${body.filter((line) => line !== '').join('\n')}
</body>
</html>
`;
}

function formatAmiss(amiss: readonly string[]): string {
  const items = amiss.map((sentence) => `<li>${escapeXml(sentence)}</li>`).join('\n');
  return `<div class="amiss"><p><b>Look at this first.</b></p>\n<ul>\n${items}\n</ul></div>`;
}

function formatSheet({ title, readings, results, checks, steps, notes }: SheetReport): string {
  const judged = checks.map(([label = '', verdict = '', text = '']) => ({
    row: [label, VERDICTS[verdict] ?? verdict, text],
    className: verdict,
  }));
  return [
    `<h2>${escapeXml(title)}</h2>`,
    formatTable('Readings', ['What', 'As typed', 'As understood'], plain(readings)),
    formatTable('Results', ['What', 'Value'], plain(results)),
    formatTable('Checks', ['What', 'Verdict', 'Why'], judged),
    formatTable('Steps', ['Step', 'Done on', 'By'], plain(steps)),
    steps.length === 0 ? '' : '<p class="sign">Signature</p>',
    ...notes.map(
      ([key = '', note = '']) => `<p class="note"><b>${escapeXml(key)}:</b> ${escapeXml(note)}</p>`,
    ),
  ]
    .filter((line) => line !== '')
    .join('\n');
}

interface Line {
  readonly row: readonly string[];
  readonly className?: string;
}

function plain(rows: readonly (readonly string[])[]): readonly Line[] {
  return rows.map((row) => ({ row }));
}

function formatTable(caption: string, heads: readonly string[], lines: readonly Line[]): string {
  if (lines.length === 0) return '';
  const head = heads.map((one) => `<th scope="col">${one}</th>`).join('');
  const rows = lines.map(({ row, className }) => {
    const cells = row.map((cell) => `<td>${escapeXml(cell)}</td>`).join('');
    return `<tr${className === undefined ? '' : ` class="${escapeXml(className)}"`}>${cells}</tr>`;
  });
  return `<table><caption>${caption}</caption>\n<tr>${head}</tr>\n${rows.join('\n')}\n</table>`;
}
