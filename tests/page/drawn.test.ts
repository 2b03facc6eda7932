import { expect, test, vi } from 'vitest';
import { createDrawn } from '../../src/page/drawn.ts';
import { h } from '../../src/page/element.ts';

async function loadPen() {
  return (text: string) => h('p', {}, text);
}

function create(load = loadPen) {
  const widths: number[] = [];
  const drawn = createDrawn('drawn', load, (tool, width) => {
    widths.push(width);
    return tool(String(width));
  });
  const box = h('div', {}, drawn.element);
  box.style.width = '500px';
  document.body.replaceChildren(box);
  return { widths, drawn, box };
}

const nextFrame = (): Promise<unknown> => new Promise((resolve) => requestAnimationFrame(resolve));

test('it draws for the width that there is, and again when that changes', async () => {
  const { widths, drawn, box } = create();
  await vi.waitFor(() => expect(widths).toEqual([500]));
  box.style.width = '300px';
  await vi.waitFor(() => expect(drawn.element.textContent).toBe('300'));
});

test('a page that is still being laid out is not drawn for', async () => {
  const { widths, drawn, box } = create();
  await vi.waitFor(() => expect(widths).toEqual([500]));
  box.style.width = '9px';
  await nextFrame();
  await nextFrame();
  drawn.redraw();
  await nextFrame();
  await nextFrame();
  expect(widths).toEqual([500]);
  box.style.width = '400px';
  await vi.waitFor(() => expect(widths).toEqual([500, 400]));
});

test('many changes in a frame are drawn once', async () => {
  const { widths, drawn } = create();
  await vi.waitFor(() => expect(widths).toHaveLength(1));
  for (let i = 0; i < 10; i++) drawn.redraw();
  await nextFrame();
  await nextFrame();
  expect(widths).toHaveLength(2);
});

test('let go of, it draws no more', async () => {
  const { widths, drawn } = create();
  await vi.waitFor(() => expect(widths).toHaveLength(1));
  drawn.redraw();
  drawn.dispose();
  await nextFrame();
  await nextFrame();
  expect(widths).toHaveLength(1);
});

test('what cannot be loaded is told where the drawing would stand', async () => {
  const { drawn } = create(() => Promise.reject(new TypeError('no line')));
  await vi.waitFor(() => expect(drawn.element.textContent).toMatch(/could not be loaded/));
});
