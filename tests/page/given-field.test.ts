import { expect, test } from 'vitest';
import { exampleOf, readGivenField, unitOfField } from '../../src/page/given-field.ts';
import { createTestDesk } from './test-desk.ts';

const SHEET = `
\`\`\`given
width = 3.212 ± 0.003 in "Width"
rim = 15 in "Rim" as in
tyre = 205 mm "Tyre"
note = "A. N. Other" "Fitted by"
open = blank in "Open"
\`\`\`
`;

test.each([
  ['width', '3.212 ± 0.003'],
  ['rim', '15'],
  ['tyre', '205'],
  ['note', 'A. N. Other'],
  ['open', ''],
])('the example of %s stands in its field as %s', (name, text) => {
  const { desk, given } = createTestDesk(SHEET);
  expect(readGivenField(desk, given(name)).text).toBe(text);
  expect(exampleOf(given(name), unitOfField(desk, given(name)))).toBe(text);
});

test.each([
  ['width', 'in', 'mm', '3.212 ± 0.003 in'],
  ['rim', 'in', 'in', '15'],
  ['tyre', 'mm', 'mm', '205'],
])('on a metric page the field of %s goes from %s to %s', (name, inch, metric, text) => {
  const { desk, given } = createTestDesk(SHEET);
  expect(unitOfField(desk, given(name))?.symbol).toBe(inch);
  desk.chooseSystem('metric');
  expect(unitOfField(desk, given(name))?.symbol).toBe(metric);
  expect(readGivenField(desk, given(name)).text).toBe(text);
});

test('a failed entry carries its sentence', () => {
  const { desk, given } = createTestDesk(SHEET);
  desk.enter(given('width'), { text: 'wide', unit: 'in' });
  expect(readGivenField(desk, given('width'))).toMatchObject({ text: 'wide', suffix: 'in' });
  expect(readGivenField(desk, given('width')).error).toMatch(/wide/);
});

test('an entry that says its own unit has none behind it', async () => {
  const { desk, given } = createTestDesk(SHEET);
  desk.enter(given('width'), { text: '80 mm' });
  await desk.settled();
  expect(readGivenField(desk, given('width'))).toMatchObject({ text: '80 mm', suffix: '' });
});
