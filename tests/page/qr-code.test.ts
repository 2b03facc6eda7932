import jsQR from 'jsqr';
import { expect, test } from 'vitest';
import { createQRCode } from '../../src/page/qr-code.ts';

/** Draws the code as a camera would see it, and has another library read it. */
async function scan(text: string, pixels: number): Promise<string | undefined> {
  const code = createQRCode(text, 'Code');
  code.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  code.setAttribute('width', String(pixels));
  code.setAttribute('height', String(pixels));
  const image = new Image();
  image.src = `data:image/svg+xml,${encodeURIComponent(new XMLSerializer().serializeToString(code))}`;
  await image.decode();
  const canvas = new OffscreenCanvas(pixels, pixels);
  const pen = canvas.getContext('2d')!;
  pen.drawImage(image, 0, 0);
  const { data } = pen.getImageData(0, 0, pixels, pixels);
  return jsQR(data, pixels, pixels)?.data;
}

test.each([
  ['a short link', 'http://localhost/#job=1.2o.d0952439.q1ZKLChQ', 400],
  ['the longest that is offered', `https://example.org/${'aB3_-'.repeat(396)}`, 1000],
])('%s is read by another library', async (_, text, pixels) => {
  expect(await scan(text, pixels)).toBe(text);
});

test('it is named for those who do not see it', () => {
  const code = createQRCode('x', 'Code of the link');
  expect([code.getAttribute('role'), code.getAttribute('aria-label')]).toEqual([
    'img',
    'Code of the link',
  ]);
});
