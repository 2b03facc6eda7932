import { expect, test } from 'vitest';
import { figureSVG } from '../../src/export/figure-svg.ts';
import { listFigures } from '../../src/export/figures.ts';
import { drawPixels } from '../../src/page/load-export.ts';
import { createPublishFigure } from '../../src/page/publish-figure.ts';
import { buttonIn, catchDownload, createPublishHost } from './made-publish.ts';

async function open(choices = {}) {
  const made = await createPublishHost(choices);
  const [figure] = listFigures(made.host.standing(), made.sheet);
  const element = createPublishFigure(made.host, figure!);
  document.body.replaceChildren(element);
  return { ...made, figure: figure!, element };
}

test('as SVG it stands alone', async () => {
  const { element } = await open();
  const caught = catchDownload();
  buttonIn(element, 'SVG').click();
  const { name, blob } = await caught;
  expect(name).toBe('10-stack-gap.svg');
  const svg = new DOMParser().parseFromString(await blob.text(), 'image/svg+xml');
  expect(svg.querySelector('parsererror')).toBeNull();
  expect(svg.documentElement.getAttribute('width')).toBe('90mm');
});

test('as PNG it has the pixels that were asked for', async () => {
  const { element, said } = await open();
  const caught = catchDownload();
  buttonIn(element, 'PNG').click();
  const { name, blob } = await caught;
  const image = await createImageBitmap(blob);
  expect([name, image.width]).toEqual(['10-stack-gap.png', 354]);
  await expect.poll(() => said.at(-1)).toMatch(/354 by \d+ pixels, 90 mm wide/);
});

test('it is shown at its size, and put away again', async () => {
  const { element } = await open();
  const show = buttonIn(element, 'Show at its size');
  show.click();
  const image = await expect.poll(() => element.querySelector('img')).toBeTruthy();
  expect(image).not.toBeNull();
  await expect.poll(() => Math.round(element.querySelector('img')!.width)).toBe(340);
  show.click();
  await expect.poll(() => element.querySelector('img')).toBeNull();
});

test('words of one’s own are kept with the job', async () => {
  const { desk, element, sheet } = await open();
  const [caption] = element.querySelectorAll('textarea');
  caption!.value = 'The gap of the Quarry Lane car.';
  caption!.dispatchEvent(new Event('change'));
  expect(desk.captionOn(sheet.name, '10-stack-gap').caption).toBe(
    'The gap of the Quarry Lane car.',
  );
});

test('outlined lettering looks as the page’s own: hardly a pixel is of another darkness', async () => {
  const { figure, host } = await open();
  const { typeface } = host.tools;
  const words = { title: figure.title, description: figure.alt };
  const print = (lettering: 'outlines' | 'font') =>
    figureSVG(
      (px) => figure.draw(document, px),
      words,
      { width: 90, colour: 'colour', lettering },
      typeface,
    );
  const [outlined, lettered] = await Promise.all(
    (['outlines', 'font'] as const).map((lettering) =>
      drawPixels({ svg: print(lettering), width: 90, dotsPerInch: 100 }),
    ),
  );
  expect(lettered!.rgba.length).toBe(outlined!.rgba.length);
  const different = outlined!.rgba.filter((value, i) => Math.abs(value - lettered!.rgba[i]!) > 96);
  expect(different.length / outlined!.rgba.length).toBeLessThan(0.01);
});
