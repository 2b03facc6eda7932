import { expect, test } from 'vitest';
import { createSystemSwitch } from '../../src/page/system-switch.ts';

test('the system that holds is the one marked', () => {
  const control = createSystemSwitch(() => {});
  control.show('metric');
  const marked = control.element.querySelector<HTMLInputElement>('input:checked');
  expect(marked?.value).toBe('metric');
});

test('choosing tells which', () => {
  const chosen: string[] = [];
  const control = createSystemSwitch((system) => chosen.push(system));
  document.body.replaceChildren(control.element);
  control.show('inch-pound');
  control.element.querySelector<HTMLInputElement>('[value=metric]')?.click();
  expect(chosen).toEqual(['metric']);
});

test('each choice is named in full, whatever is shown', () => {
  const { element } = createSystemSwitch(() => {});
  expect(element.querySelector('legend')?.textContent).toBe('Units');
  expect([...element.querySelectorAll('input')].map((input) => input.ariaLabel)).toEqual([
    'inch-pound, in',
    'metric, mm',
  ]);
});
