import type { BundleOptions, BundleSheet, CaptionedFigure } from './bundle-contents.ts';
import { escapeXml } from './svg-tree.ts';
import { tableHTML } from './table-text.ts';

const STYLE = `body{max-width:52rem;margin:2rem auto;padding:0 1rem;font:1rem/1.5 Georgia,serif;color:#1c2529}
figure{margin:2rem 0}img{max-width:100%;height:auto}figcaption,.files,table{font-family:Arial,sans-serif;font-size:.92rem}
table{border-collapse:collapse;margin:1.5rem 0}caption{text-align:left;font-weight:700}
th,td{padding:.25rem .8rem .25rem 0;border-bottom:1px solid #d9d3c4;text-align:left;vertical-align:top}
[align=right]{text-align:right}`;

/** A page without script that shows what lies in the bundle. */
export function formatIndex(
  { title, credit, job }: Pick<BundleOptions, 'title' | 'credit' | 'job'>,
  contents: readonly BundleSheet[],
): string {
  const body = [
    `<h1>${escapeXml(title)}</h1>`,
    credit === '' ? '' : `<p>${escapeXml(credit)}</p>`,
    ...contents.flatMap(formatSheet),
    '<h2>Files</h2>',
    `<p class="files">${listFiles(job !== undefined)}</p>`,
  ];
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>${escapeXml(title)}</title>
<style>${STYLE}</style>
</head>
<body>
${body.filter((line) => line !== '').join('\n')}
</body>
</html>
`;
}

function formatSheet({ sheet, figures, tables, sources }: BundleSheet): readonly string[] {
  if (figures.length + tables.length === 0) return [];
  const notes = sources.map(
    ({ what, source }) => `<li><b>${escapeXml(what)}</b>: ${escapeXml(source)}</li>`,
  );
  return [
    `<h2>${escapeXml(sheet.title)}</h2>`,
    ...figures.map(formatFigure),
    ...tables.map(tableHTML),
    notes.length === 0 ? '' : `<h3>Method and sources</h3>\n<ul>\n${notes.join('\n')}\n</ul>`,
  ];
}

function formatFigure({ id, caption, alt, files }: CaptionedFigure): string {
  const shown = files.find((file) => /\.(?:svg|png)$/.test(file));
  const image =
    shown === undefined ? '' : `<img src="${escapeXml(shown)}" alt="${escapeXml(alt)}">`;
  const links = files.map((file) => `<a href="${escapeXml(file)}">${escapeXml(file)}</a>`);
  return `<figure id="${escapeXml(id)}">${image}<figcaption>${escapeXml(caption)}</figcaption><p class="files">${links.join(', ')}</p></figure>`;
}

function listFiles(hasJob: boolean): string {
  const files = ['captions.md', 'sources.md', ...(hasJob ? ['job.json'] : [])];
  return files.map((file) => `<a href="${file}">${file}</a>`).join(', ');
}
