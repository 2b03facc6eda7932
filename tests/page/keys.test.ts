import { afterEach, expect, test } from 'vitest';
import { h } from '../../src/page/element.ts';
import { listenForKeys } from '../../src/page/keys.ts';

const pressed: string[] = [];
const deafen = listenForKeys(document, {
  undo: () => pressed.push('undo'),
  redo: () => pressed.push('redo'),
});
afterEach(() => void pressed.splice(0));

function press(init: KeyboardEventInit, target: EventTarget = document.body): boolean {
  return target.dispatchEvent(
    new KeyboardEvent('keydown', { bubbles: true, cancelable: true, ...init }),
  );
}

test.each([
  [{ key: 'z', ctrlKey: true }, ['undo']],
  [{ key: 'z', metaKey: true }, ['undo']],
  [{ key: 'Z', ctrlKey: true, shiftKey: true }, ['redo']],
  [{ key: 'y', ctrlKey: true }, ['redo']],
  [{ key: 'z' }, []],
  [{ key: 'z', ctrlKey: true, altKey: true }, []],
])('%j does %j', (init, done) => {
  const passed = press(init);
  expect(pressed).toEqual(done);
  expect(passed).toBe(done.length === 0);
});

test('in a text field the keys belong to the field', () => {
  const field = h('input', { type: 'text' });
  document.body.replaceChildren(field);
  press({ key: 'z', ctrlKey: true }, field);
  expect(pressed).toEqual([]);
});

test('on a slider or a box they belong to the page', () => {
  const box = h('input', { type: 'checkbox' });
  document.body.replaceChildren(box);
  press({ key: 'z', ctrlKey: true }, box);
  expect(pressed).toEqual(['undo']);
});

test('a page that is closed hears nothing', () => {
  deafen();
  press({ key: 'z', ctrlKey: true });
  expect(pressed).toEqual([]);
});
