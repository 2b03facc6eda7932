import { expect, test } from 'vitest';
import { createDrawing } from '../../src/page/drawing.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const sheetWith = (...lines: readonly string[]) => `# A
\`\`\`given
angles = [0, 90, 180, 270] deg
readings = [0, 3, -2, 3] thou to 1
\`\`\`
\`\`\`drawing dial "Round the bore"
${lines.join('\n')}
\`\`\`
`;

const BOUND = sheetWith('angles = angles', 'readings = readings');

test('a drawing is a figure with its title, and what it shows in words', async () => {
  const { desk, sheet, block, show } = createTestDesk(BOUND);
  const figure = show(createDrawing(desk, sheet, block('drawing')));
  await expect.poll(() => figure.querySelector('svg title')?.textContent).toBe('Round the bore');
  expect(textOf(figure.querySelector('figcaption'))).toMatch(/^Round the bore\. Readings: 12:00 /);
});

test('it is drawn anew when a reading changes', async () => {
  const { desk, sheet, block, show, given } = createTestDesk(BOUND);
  const figure = show(createDrawing(desk, sheet, block('drawing')));
  await expect.poll(() => figure.querySelector('svg')).not.toBeNull();
  const before = textOf(figure.querySelector('figcaption'));
  desk.enter(given('readings'), { text: '[0, 9, -2, 3]' });
  await expect.poll(() => textOf(figure.querySelector('figcaption'))).not.toBe(before);
});

test('a drawing that cannot be bound says why, in its place', () => {
  const { desk, sheet, block, show } = createTestDesk(sheetWith('angles = angles'));
  const place = show(createDrawing(desk, sheet, block('drawing')));
  expect(textOf(place)).toMatch(/^There is no drawing: .*readings/);
});
