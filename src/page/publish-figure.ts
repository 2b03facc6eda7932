import { figureSVG, type PrintOptions } from '../export/figure-svg.ts';
import type { Figure } from '../export/figures.ts';
import { encodePNG } from '../export/png.ts';
import { createButton } from './button.ts';
import { downloadBytes, downloadText } from './download.ts';
import { fill, h } from './element.ts';
import type { PublishHost } from './publish-host.ts';

/** One figure: its words, which can be changed, and the files that it can be had as. */
export function createPublishFigure(host: PublishHost, figure: Figure): HTMLElement {
  const preview = h('div', { class: 'print-preview' });
  const words = () => ({ caption: figure.caption, alt: figure.alt, ...captionOf(host, figure) });
  const draw = (options: PrintOptions) =>
    figureSVG(
      (width) => figure.draw(host.tools.document, width),
      { title: figure.title, description: words().alt },
      options,
      host.tools.typeface,
    );

  async function savePNG(): Promise<void> {
    const { width, dotsPerInch, colour } = host.choices();
    host.say(`Drawing ${figure.title} …`);
    const svg = draw({ width, colour, lettering: 'outlines' });
    const pixels = await host.tools.rasterise(svg, width, dotsPerInch);
    const said = { title: figure.title, description: words().alt };
    const png = encodePNG(pixels, { dotsPerInch, colour, ...said });
    downloadBytes(png, `${figure.id}.png`, 'image/png');
    host.say(`${figure.id}.png: ${pixels.width} by ${pixels.height} pixels, ${width} mm wide.`);
  }

  async function copy(): Promise<void> {
    await navigator.clipboard.writeText(figure.csv());
    host.say(`The numbers of ${figure.title} are on the clipboard.`);
  }

  function toggle(): void {
    const isShown = preview.childElementCount > 0;
    fill(preview, isShown ? '' : createPreview(draw(host.choices()), words().alt));
    show.textContent = isShown ? 'Show at its size' : 'Hide';
  }

  const attempt = (act: () => void | Promise<void>) => async () => {
    try {
      await act();
    } catch (error) {
      host.say(`${figure.title}: ${error instanceof Error ? error.message : String(error)}.`);
    }
  };
  const show = createButton('Show at its size', attempt(toggle));
  const saveSVG = () => downloadText(draw(host.choices()), `${figure.id}.svg`, 'image/svg+xml');
  const saveCSV = () => downloadText(figure.csv(), `${figure.id}.csv`, 'text/csv');
  return h(
    'li',
    {},
    h('b', {}, figure.title),
    createWords(host, figure),
    h(
      'div',
      { class: 'buttons', role: 'group', 'aria-label': figure.title },
      show,
      createButton('SVG', attempt(saveSVG)),
      createButton('PNG', attempt(savePNG)),
      createButton('CSV', attempt(saveCSV)),
      createButton('Copy numbers', attempt(copy)),
    ),
    preview,
  );
}

/** Millimetres on the screen are as near to those on paper as the screen knows. */
function createPreview(svg: string, alt: string): HTMLElement {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  const done = () => URL.revokeObjectURL(address);
  return h('img', { src: address, alt, on: { load: done, error: done } });
}

function captionOf({ desk, sheet }: PublishHost, { id }: Figure) {
  return desk.captionOn(sheet.name, id);
}

function createWords(host: PublishHost, figure: Figure): HTMLElement {
  const { desk, sheet } = host;
  const field = (kind: 'caption' | 'alt', label: string) => {
    const area = h('textarea', {
      rows: 2,
      placeholder: figure[kind],
      on: {
        change: () => {
          const own = { ...captionOf(host, figure), [kind]: area.value.trim() };
          desk.setCaption(sheet.name, figure.id, own);
        },
      },
    });
    area.value = captionOf(host, figure)[kind] ?? figure[kind];
    return h('label', {}, h('span', {}, label), area);
  };
  return h(
    'details',
    { class: 'words' },
    h('summary', {}, 'Words'),
    field('caption', 'Caption'),
    field('alt', 'What it shows, for those who do not see it'),
  );
}
