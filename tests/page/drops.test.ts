import { expect, test } from 'vitest';
import { listenForDrops } from '../../src/page/drops.ts';

function drop(...files: readonly File[]): Event {
  const dataTransfer = new DataTransfer();
  for (const file of files) dataTransfer.items.add(file);
  const event = new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true });
  document.body.dispatchEvent(event);
  return event;
}

test('a file that is dropped anywhere is taken, and the browser does not leave the page for it', () => {
  const taken: string[] = [];
  const stop = listenForDrops(({ name }) => taken.push(name));
  expect(drop(new File(['x'], 'a.json')).defaultPrevented).toBe(true);
  stop();
  expect(drop(new File(['x'], 'b.json')).defaultPrevented).toBe(false);
  expect(taken).toEqual(['a.json']);
});

test('text that is dropped is left to the browser', () => {
  const stop = listenForDrops(() => {
    throw new Error('no file');
  });
  expect(drop().defaultPrevented).toBe(false);
  stop();
});
