import UPNG from 'upng-js';

/** Pixels row by row, four bytes each: red, green, blue, opacity. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array | Uint8ClampedArray;
}

/** Two pictures where they are least alike. */
export interface Difference {
  /** 0 where they are the same, 255 where one is black and the other white. */
  readonly size: number;
  /** Px of the pictures. */
  readonly x: number;
  readonly y: number;
}

export function readPicture(png: Uint8Array): Picture {
  const image = UPNG.decode(png.slice().buffer as ArrayBuffer);
  const { width, height } = image;
  return { width, height, rgba: new Uint8Array(UPNG.toRGBA8(image)[0]!) };
}

/** So many rows of a picture. */
export function cutRows({ width, rgba }: Picture, from: number, height: number): Picture {
  return { width, height, rgba: rgba.subarray(4 * width * from, 4 * width * (from + height)) };
}

/**
 * Where two pictures of the same size differ most, each seen so coarsely that a square of so many
 * pixels has one colour: the edges of letters and lines, which every program smooths in its own way,
 * then hardly count. Leans on nothing outside of itself, so that it can be handed to a page.
 */
export function findDifference(a: Picture, b: Picture, square: number): Difference {
  const sizeOf = ({ width, height }: Picture) => `${width} by ${height}`;
  if (sizeOf(a) !== sizeOf(b)) throw new RangeError(`${sizeOf(a)} is not ${sizeOf(b)}`);
  const across = Math.ceil(a.width / square);

  /** The mean of each square, three numbers each; one cut short at the edge counts by as much less. */
  const shrink = ({ width, height, rgba }: Picture): Float64Array => {
    const sums = new Float64Array(3 * across * Math.ceil(height / square));
    for (let y = 0; y < height; y += 1) {
      const row = Math.floor(y / square) * across;
      for (let x = 0; x < width; x += 1) {
        const from = 4 * (y * width + x);
        const to = 3 * (row + Math.floor(x / square));
        sums[to]! += rgba[from]!;
        sums[to + 1]! += rgba[from + 1]!;
        sums[to + 2]! += rgba[from + 2]!;
      }
    }
    return sums.map((sum) => sum / square ** 2);
  };

  const [left, right] = [shrink(a), shrink(b)];
  const sizes = left.map((value, i) => Math.abs(value - right[i]!));
  const at = sizes.reduce((most, size, i) => (size > sizes[most]! ? i : most), 0);
  const place = Math.floor(at / 3);
  return {
    size: sizes[at]!,
    x: (place % across) * square,
    y: Math.floor(place / across) * square,
  };
}
