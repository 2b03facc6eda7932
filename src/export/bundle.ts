import { strToU8, type Zippable, zipSync } from 'fflate';
import { tableCSV } from '../chart/csv.ts';
import type { FigureTable } from '../sheet/figure-table.ts';
import type { Sheet } from '../sheet/sheet.ts';
import type { Standing } from '../sheet/standing.ts';
import type {
  BundleOptions,
  BundleSheet,
  CaptionedFigure,
  TableFormat,
} from './bundle-contents.ts';
import { figureSVG, type PrintOptions } from './figure-svg.ts';
import { listFigures, listTables, nameFile } from './figures.ts';
import { formatIndex } from './index-page.ts';
import { encodePNG, type Pixels } from './png.ts';
import { listSources } from './sources.ts';
import { tableHTML, tableMarkdown } from './table-text.ts';
import type { Typeface } from './typeface.ts';

/** What draws; passed in, since browser and terminal have each their own. */
export interface BundleTools {
  readonly document: Document;
  readonly typeface: Typeface;
  rasterise(svg: string, width: number, dotsPerInch: number): Pixels | Promise<Pixels>;
}

/**
 * Everything for the write-up in one zip: figures, tables, captions, sources, the job file, and a page
 * that shows them. The same job gives the same bytes.
 *
 * @param onProgress told after each figure, from 0 to 1
 */
export async function makeBundle(
  standing: Standing,
  sheets: readonly Sheet[],
  options: BundleOptions,
  tools: BundleTools,
  onProgress: (share: number) => void | Promise<void> = () => {},
): Promise<Uint8Array> {
  const files: Zippable = {};
  const contents = sheets.map((sheet) => readSheetContents(standing, sheet, options));
  const all = contents.flatMap(({ figures }) => figures);
  for (const [i, figure] of all.entries()) {
    Object.assign(files, await writeFigure(figure, options, tools));
    await onProgress((i + 1) / all.length);
  }
  for (const { sheet, tables } of contents)
    Object.assign(files, writeTables(sheet, tables, options));
  files['captions.md'] = strToU8(formatCaptions(contents));
  files['sources.md'] = strToU8(formatSources(contents));
  files['index.html'] = strToU8(formatIndex(options, contents));
  if (options.job !== undefined) files['job.json'] = strToU8(options.job);
  return zipSync(sortFiles(files), { level: 6, mtime: START_OF_TIME });
}

/** The earliest time that a zip can hold: the same in every zone, so that the bytes are the same. */
const START_OF_TIME = new Date(1980, 0, 1);

function readSheetContents(
  standing: Standing,
  sheet: Sheet,
  { chosen, figureFormats, wordsOf }: BundleOptions,
): BundleSheet {
  const figures = listFigures(standing, sheet)
    .filter(({ id }) => chosen === undefined || chosen.has(id))
    .map((figure) => ({
      ...figure,
      ...wordsOf(figure),
      files: figureFormats.map((format) => `figures/${figure.id}.${format}`),
    }));
  const tables = listTables(standing, sheet);
  return { sheet, figures, tables, sources: listSources(standing.book, sheet) };
}

async function writeFigure(
  figure: CaptionedFigure,
  options: BundleOptions,
  { document, typeface, rasterise }: BundleTools,
): Promise<Zippable> {
  const { width, dotsPerInch, colour, figureFormats } = options;
  const words = { title: figure.title, description: figure.alt };
  const draw = (print: PrintOptions) =>
    figureSVG((px) => figure.draw(document, px), words, print, typeface);
  const files: Zippable = {};
  if (figureFormats.includes('svg')) files[`figures/${figure.id}.svg`] = strToU8(draw(options));
  if (figureFormats.includes('png')) {
    const outlined = draw({ width, colour, lettering: 'outlines' });
    const pixels = await rasterise(outlined, width, dotsPerInch);
    const png = encodePNG(pixels, { dotsPerInch, colour, ...words });
    files[`figures/${figure.id}.png`] = [png, { level: 0 }];
  }
  if (figureFormats.includes('csv')) files[`figures/${figure.id}.csv`] = strToU8(figure.csv());
  return files;
}

const TABLE_WRITERS: Readonly<Record<TableFormat, (table: FigureTable) => string>> = {
  md: tableMarkdown,
  html: tableHTML,
  csv: tableCSV,
};

function writeTables(
  sheet: Sheet,
  tables: readonly FigureTable[],
  { tableFormats }: BundleOptions,
): Zippable {
  const files = tables.flatMap((table) =>
    tableFormats.map((format) => {
      const name = `tables/${nameFile(sheet, 'table', table.title)}.${format}`;
      return [name, strToU8(TABLE_WRITERS[format](table))] as const;
    }),
  );
  return Object.fromEntries(files);
}

function formatCaptions(contents: readonly BundleSheet[]): string {
  const parts = contents.flatMap(({ sheet, figures }) =>
    figures.length === 0
      ? []
      : [
          `# ${sheet.title}\n`,
          ...figures.map(
            ({ id, caption, alt }) => `## ${id}\n\n${caption}\n\nAlternative text: ${alt}\n`,
          ),
        ],
  );
  return parts.join('\n');
}

function formatSources(contents: readonly BundleSheet[]): string {
  const parts = contents.flatMap(({ sheet, sources }) =>
    sources.length === 0
      ? []
      : [
          `# ${sheet.title}\n`,
          ...sources.map(({ what, source }) => `- **${what}**: ${source}`),
          '',
        ],
  );
  return parts.join('\n');
}

function sortFiles(files: Zippable): Zippable {
  const names = Object.keys(files).sort();
  return Object.fromEntries(names.map((name) => [name, files[name]!]));
}
