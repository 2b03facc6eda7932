import type { Page } from 'playwright';
import {
  cutRows,
  type Difference,
  findDifference,
  type Picture,
  readPicture,
} from '../support/low-picture.ts';

/** Something drawn: a line, a shape, or a piece of lettering. */
export interface Mark {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** Px of the drawing's layout. */
  readonly box: Box;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A figure as the page draws it. */
export interface ShownFigure {
  readonly title: string;
  readonly description: string;
  readonly height: number;
  readonly marks: readonly Mark[];
  readonly picture: Picture;
  /** The same without its lettering. */
  readonly bare: Picture;
}

/** A file as an XML reader takes it. */
export interface ReadFile {
  /** What the reader finds wrong. */
  readonly fault: string | undefined;
  readonly attributes: Readonly<Record<string, string>>;
  readonly title: string;
  readonly description: string;
  readonly marks: readonly Mark[];
}

const DRAWN = 'main figure > .plot, main figure > .drawn';

/**
 * Opens a sheet, has its figures drawn for a width, and lays them out below one another, as they are,
 * on white. Mutates the page: the sheet has lost its figures until it is opened again.
 */
export async function layOutFigures(
  page: Page,
  address: string,
  count: number,
  width: number,
): Promise<readonly ShownFigure[]> {
  await page.goto(address);
  await page.waitForFunction(
    (wanted) => {
      const places = [...document.querySelectorAll<HTMLElement>(wanted.selector)];
      for (const place of places) place.style.width = `${wanted.width}px`;
      const drawn = places.filter(
        (place) => place.querySelector('svg')?.viewBox.baseVal.width === wanted.width,
      );
      return places.length === wanted.count && drawn.length === wanted.count;
    },
    { selector: DRAWN, count, width },
  );
  const read = await page.evaluate(moveToTable, DRAWN);
  const table = page.locator('#light-table');
  const whole = readPicture(await table.screenshot({ scale: 'css' }));
  await table.evaluate((element) => {
    for (const text of element.querySelectorAll('text')) text.setAttribute('visibility', 'hidden');
  });
  const bare = readPicture(await table.screenshot({ scale: 'css' }));
  await table.evaluate((element) => {
    element.remove();
    document.getElementById('layshaft-page')!.style.display = '';
  });
  return read.map(({ top, ...figure }) => ({
    ...figure,
    picture: cutRows(whole, top, figure.height),
    bare: cutRows(bare, top, figure.height),
  }));
}

/** Runs in the page. */
function moveToTable(selector: string) {
  const places = [...document.querySelectorAll<HTMLElement>(selector)];
  const table = document.createElement('div');
  table.id = 'light-table';
  table.style.cssText = 'position: absolute; left: 0; top: 0; background: #fff';
  table.append(...places);
  document.body.append(table);
  document.getElementById('layshaft-page')!.style.display = 'none';
  // The halo of letters is of the colour of the paper.
  document.documentElement.style.setProperty('--paper', '#fff');
  return places.map((place) => {
    const svg = place.querySelector('svg')!;
    const marks = [...svg.querySelectorAll<SVGGraphicsElement>('*:not(title, desc, text *)')];
    return {
      title: svg.querySelector('title')?.textContent ?? '',
      description: svg.querySelector('desc')?.textContent ?? '',
      top: place.getBoundingClientRect().top + scrollY,
      height: svg.viewBox.baseVal.height,
      marks: marks.map((mark) => {
        const { x, y, width, height } = 'getBBox' in mark ? mark.getBBox() : new DOMRect();
        const listed = [...mark.attributes].map(({ name, value }) => [name, value] as const);
        return {
          name: mark.nodeName,
          attributes: Object.fromEntries(listed),
          box: { x, y, width, height },
        };
      }),
    };
  });
}

/** Reads files on a page that holds nothing else, as XML. Mutates the page. */
export async function readFiles(
  page: Page,
  files: readonly string[],
): Promise<readonly ReadFile[]> {
  return page.evaluate(
    (texts) =>
      texts.map((text) => {
        const parsed = new DOMParser().parseFromString(text, 'image/svg+xml');
        document.body.replaceChildren(document.importNode(parsed.documentElement, true));
        const svg = document.body.firstElementChild!;
        const list = ({ attributes }: Element) =>
          Object.fromEntries([...attributes].map(({ name, value }) => [name, value]));
        return {
          fault: parsed.querySelector('parsererror')?.textContent ?? undefined,
          attributes: list(svg),
          title: svg.querySelector('title')?.textContent ?? '',
          description: svg.querySelector('desc')?.textContent ?? '',
          marks: [...svg.querySelectorAll<SVGGraphicsElement>('*:not(title, desc)')].map((mark) => {
            const { x, y, width, height } = 'getBBox' in mark ? mark.getBBox() : new DOMRect();
            return { name: mark.nodeName, attributes: list(mark), box: { x, y, width, height } };
          }),
        };
      }),
    [...files],
  );
}

/** Files without some of their marks, each told by their places among them. */
export async function leaveOut(
  page: Page,
  files: readonly { readonly text: string; readonly places: readonly number[] }[],
): Promise<readonly string[]> {
  return page.evaluate(
    (list) =>
      list.map(({ text, places }) => {
        const whole = new DOMParser().parseFromString(text, 'image/svg+xml');
        const marks = [...whole.documentElement.querySelectorAll('*:not(title, desc)')];
        for (const place of places) marks[place]?.remove();
        return new XMLSerializer().serializeToString(whole);
      }),
    files.map(({ text, places }) => ({ text, places: [...places] })),
  );
}

export interface PlacedFile {
  readonly text: string;
  readonly height: number;
}

/** Pictures of drawings, each alone in an image, at so many px. Mutates the page. */
export async function takePictures(
  page: Page,
  files: readonly PlacedFile[],
  width: number,
): Promise<readonly Picture[]> {
  const images = files.map(({ text, height }) => {
    const data = Buffer.from(text).toString('base64');
    return `<img src="data:image/svg+xml;base64,${data}" style="display: block; width: ${width}px; height: ${height}px">`;
  });
  await page.setContent(
    `<body style="margin: 0"><div style="width: ${width}px">${images.join('')}</div>`,
  );
  await page.evaluate(() => Promise.all([...document.images].map((image) => image.decode())));
  const whole = readPicture(await page.locator('div').screenshot({ scale: 'css' }));
  let bottom = 0;
  return files.map(({ height }) => {
    bottom += height;
    return cutRows(whole, bottom - height, height);
  });
}

interface Tools {
  readonly find: typeof findDifference;
}

/** How much PNG files differ from what the page makes of their drawings, dot by dot. Mutates the page. */
export async function compareDots(
  page: Page,
  files: readonly { readonly png: Uint8Array; readonly text: string }[],
  square: number,
): Promise<readonly Difference[]> {
  const tools = await page.evaluateHandle<Tools>(`({ find: ${findDifference} })`);
  return page.evaluate(
    async ({ tools: { find }, sources, side }) => {
      const load = async (source: string) => {
        const image = new Image();
        image.src = source;
        await image.decode();
        return image;
      };
      const draw = (image: HTMLImageElement, width: number, height: number): Picture => {
        const canvas = new OffscreenCanvas(width, height);
        const context = canvas.getContext('2d')!;
        context.drawImage(image, 0, 0, width, height);
        return { width, height, rgba: context.getImageData(0, 0, width, height).data };
      };
      const found: Difference[] = [];
      for (const [dots, drawing] of sources) {
        const [png, svg] = await Promise.all([load(dots), load(drawing)]);
        const { naturalWidth: width, naturalHeight: height } = png;
        found.push(find(draw(png, width, height), draw(svg, width, height), side));
      }
      return found;
    },
    {
      tools,
      side: square,
      sources: files.map(
        ({ png, text }) =>
          [
            `data:image/png;base64,${Buffer.from(png).toString('base64')}`,
            `data:image/svg+xml;base64,${Buffer.from(text).toString('base64')}`,
          ] as const,
      ),
    },
  );
}
