import { expect, test, vi } from 'vitest';
import { createCompare } from '../../src/page/compare.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `
\`\`\`given
axle = 3.25 "Axle" from 2 to 5 to 0.01
speed = 70 mph "Speed" from 0 mph to 150 mph
\`\`\`

\`\`\`work
engine = axle * 800 rpm "Engine speed" as rpm to 10
\`\`\`
`;

function show(source = SHEET) {
  const made = createTestDesk(source);
  const view = createCompare(made.desk, made.sheet)!;
  return { ...made, element: made.show(view) as HTMLDetailsElement };
}

test('a sheet that works nothing out has nothing to compare', () => {
  const { desk, sheet } = createTestDesk('```given\nx = 1\n```\n');
  expect(createCompare(desk, sheet)).toBeUndefined();
});

test('what compares comes when it is opened', async () => {
  const { element } = show();
  expect(element.querySelector('button')).toBeNull();
  element.open = true;
  await vi.waitFor(() => expect(textOf(element.querySelector('button'))).toBe('Add a proposal'));
});

test('its heading counts the proposals', () => {
  const { desk, element } = show();
  expect(textOf(element.querySelector('summary'))).toMatch(/set a proposal beside the job/);
  const variants = [{ name: 'A', entries: {} }];
  desk.replace('one', { ...desk.job(), variants });
  expect(textOf(element.querySelector('summary'))).toMatch(/one proposal beside the job/);
  desk.replace('two', { ...desk.job(), variants: [...variants, { name: 'B', entries: {} }] });
  expect(textOf(element.querySelector('summary'))).toMatch(/2 proposals beside the job/);
});
