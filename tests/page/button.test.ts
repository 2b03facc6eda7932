import { expect, test } from 'vitest';
import { createButton } from '../../src/page/button.ts';

test('a button does what it says, and sends no form', () => {
  let pressed = 0;
  const button = createButton('Press', () => {
    pressed += 1;
  });
  button.click();
  expect([button.textContent, button.type, pressed]).toEqual(['Press', 'button', 1]);
});
