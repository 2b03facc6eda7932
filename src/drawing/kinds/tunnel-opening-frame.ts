import type { TunnelScene } from './tunnel-opening-scene.ts';

/** Beside the tunnel, for its hatching; and at its ends, for the names of gears. */
const BESIDE = 12;
const ENDS = 26;
/** The figure is not drawn larger than this, in px, nor narrower. */
const WIDEST = 420;
const TALLEST = 500;
const NARROWEST = 40;

/** From metres to px, one scale both ways, in a figure `width` by `height`. */
export interface TunnelFrame {
  readonly scale: number;
  readonly width: number;
  readonly height: number;
  readonly x: (right: number) => number;
  readonly y: (back: number) => number;
}

/** @param columns width of what stands to the right of the figure; `least` height of it. */
export function createTunnelFrame(
  { extent }: TunnelScene,
  width: number,
  columns: number,
  least: number,
): TunnelFrame {
  const [wide, long] = [extent.right - extent.left, extent.rear - extent.front];
  const room = Math.max(NARROWEST, Math.min(WIDEST, width - columns - 2 * BESIDE));
  const scale = Math.min(room / wide, (TALLEST - 2 * ENDS) / long);
  const drawn = wide * scale + 2 * BESIDE;
  const height = Math.max(long * scale + 2 * ENDS, least);
  const left = Math.max(0, (width - drawn - columns) / 2) + BESIDE;
  const top = (height - long * scale) / 2;
  return {
    scale,
    width: left + wide * scale + BESIDE,
    height,
    x: (right) => left + (right - extent.left) * scale,
    y: (back) => top + (back - extent.front) * scale,
  };
}
