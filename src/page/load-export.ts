import type { BundleTools } from '../export/bundle.ts';
import type { Pixels } from '../export/png.ts';
import { pixelsAcross } from '../export/print-size.ts';
import { loadTypeface } from '../export/tools.ts';
import { makePixelWorker, readFont } from './export-files.ts';
import type { PixelAnswer, PixelOrder } from './pixel-worker.ts';

let tools: Promise<BundleTools> | undefined;

/** What prints figures: brought once, when it is first asked for. */
export function loadExport(): Promise<BundleTools> {
  tools ??= loadTools().catch((error) => {
    tools = undefined;
    throw error;
  });
  return tools;
}

async function loadTools(): Promise<BundleTools> {
  const typeface = await loadTypeface(readFont);
  return { document, typeface, rasterise: createPixelMaker(makePixelWorker()) };
}

/** Pixels from the worker, or, where there is none or it fails, from the browser's own canvas. */
function createPixelMaker(worker: Worker | undefined): BundleTools['rasterise'] {
  const waiting = new Map<number, (answer: PixelAnswer | undefined) => void>();
  let usable = worker;
  let count = 0;
  const settleAll = () => {
    usable = undefined;
    for (const settle of waiting.values()) settle(undefined);
    waiting.clear();
  };
  worker?.addEventListener('error', settleAll);
  worker?.addEventListener('message', ({ data }: MessageEvent<PixelAnswer>) => {
    waiting.get(data.id)?.(data);
    waiting.delete(data.id);
  });
  return async (svg, width, dotsPerInch) => {
    count += 1;
    const order: PixelOrder = { id: count, svg, width, dotsPerInch };
    const answer = await new Promise<PixelAnswer | undefined>((settle) => {
      if (usable === undefined) return settle(undefined);
      waiting.set(order.id, settle);
      usable.postMessage(order);
    });
    return answer !== undefined && 'pixels' in answer ? answer.pixels : drawPixels(order);
  };
}

/** The same drawing by the browser. */
export async function drawPixels({
  svg,
  width,
  dotsPerInch,
}: Omit<PixelOrder, 'id'>): Promise<Pixels> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const across = pixelsAcross(width, dotsPerInch);
    const down = Math.round((across * image.naturalHeight) / image.naturalWidth);
    const canvas = document.createElement('canvas');
    canvas.width = across;
    canvas.height = down;
    const context = canvas.getContext('2d')!;
    // A picture for print is opaque to its last pixel.
    context.fillStyle = '#ffffff';
    context.fillRect(0, 0, across, down);
    context.drawImage(image, 0, 0, across, down);
    const { data } = context.getImageData(0, 0, across, down);
    return { width: across, height: down, rgba: new Uint8Array(data.buffer) };
  } finally {
    URL.revokeObjectURL(address);
  }
}
