import { makeBundle } from '../export/bundle.ts';
import type { BundleOptions, FigureFormat } from '../export/bundle-contents.ts';
import { nameJobFile } from '../job/file-name.ts';
import { formatJobFile } from '../job/read-job.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { createButton } from './button.ts';
import { downloadBytes } from './download.ts';
import { h } from './element.ts';
import type { PublishHost } from './publish-host.ts';

/** The write-up in one zip: this sheet's, or that of the whole job; with progress and a way to stop. */
export function createPublishBundle(host: PublishHost): HTMLElement {
  const progress = h('progress', { max: 1, value: 0, 'aria-label': 'Drawing the figures' });
  const stop = createButton('Stop', () => {
    isStopped = true;
  });
  const formats = (['svg', 'png', 'csv'] as const).map((format) => ({
    format,
    field: h('input', { type: 'checkbox', checked: format !== 'csv' }),
  }));
  const buttons = [
    createButton('This sheet in one zip', () => void make([host.sheet])),
    createButton(
      'The whole job in one zip',
      () => void make(host.desk.book.sheets.filter(isOfJob)),
    ),
  ];
  let isStopped = false;

  async function make(sheets: readonly Sheet[]): Promise<void> {
    setBusy(true);
    try {
      const bytes = await makeBundle(host.standing(), sheets, readOptions(), host.tools, report);
      const name = nameJobFile(host.desk.job()).replace(/\.json$/, '.zip');
      downloadBytes(bytes, name, 'application/zip');
      host.say(`${name}: ${Math.ceil(bytes.length / 1024)} kB.`);
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      host.say(isStopped ? 'Stopped. Nothing was written.' : `No zip was made: ${why}.`);
    } finally {
      setBusy(false);
    }
  }

  async function report(share: number): Promise<void> {
    if (isStopped) throw new Error('stopped');
    progress.value = share;
    // Typing and scrolling go on between two figures.
    await new Promise((resolve) => setTimeout(resolve));
  }

  function setBusy(busy: boolean): void {
    isStopped = false;
    progress.value = 0;
    progress.hidden = !busy;
    stop.hidden = !busy;
    for (const button of buttons) button.toggleAttribute('disabled', busy);
  }

  function readOptions(): BundleOptions {
    const job = host.desk.job();
    const figureFormats: readonly FigureFormat[] = formats
      .filter(({ field }) => field.checked)
      .map(({ format }) => format);
    return {
      ...host.choices(),
      figureFormats,
      tableFormats: ['md', 'csv'],
      title: job.vehicle === '' ? job.title : `${job.vehicle}: ${job.title}`,
      credit: job.worker,
      wordsOf: ({ sheet, id }) => host.desk.captionOn(sheet, id),
      job: formatJobFile(job),
    };
  }

  setBusy(false);
  return h(
    'div',
    { class: 'bundle' },
    h('h3', {}, 'The write-up'),
    h(
      'p',
      { class: 'meaning' },
      'Figures, tables, captions, sources and the job file in one zip, with a page that shows them.',
    ),
    h(
      'div',
      { class: 'buttons', role: 'group', 'aria-label': 'Figures as' },
      ...formats.map(({ format, field }) => h('label', {}, field, ` ${format.toUpperCase()}`)),
    ),
    h('div', { class: 'buttons' }, ...buttons, stop, progress),
  );
}

/** The guide to writing sheets is no part of any job. */
function isOfJob({ number }: Sheet): boolean {
  return number !== undefined && number > 0;
}
