import { expect, test, vi } from 'vitest';
import { createChart } from '../../src/page/chart.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `
\`\`\`given
axle = 3 "Axle" from 2 to 4
wide = 2 in "Wide"
\`\`\`

\`\`\`work
out = axle * wide "Out" as in to 0.1
\`\`\`

\`\`\`chart "Map"
out as in over axle from 2 to 4 and wide from 1 in to 5 in
\`\`\`
`;

function show() {
  const made = createTestDesk(SHEET);
  const element = made.show(createChart(made.desk, made.sheet, made.block('chart')));
  return { ...made, element };
}

test('a map is a figure with its sentence, and follows what changes', async () => {
  const { desk, given, element } = show();
  await vi.waitFor(() => expect(element.querySelector('svg')).not.toBeNull());
  const caption = () => textOf(element.querySelector('figcaption'));
  expect(caption()).toMatch(/^Map\. Out over axle from 2 to 4 and wide from 1 in to 5 in\./);
  expect(caption()).toContain('The job stands at 3 and 2 in, with 6 in.');
  desk.enter(given('axle'), { text: '2.5' });
  await vi.waitFor(() => expect(caption()).toContain('The job stands at 2.5 and 2 in'));
});

test('its numbers are a table one click away', async () => {
  const { element } = show();
  await vi.waitFor(() => expect(element.querySelector('svg')).not.toBeNull());
  element.querySelector('details')!.open = true;
  await vi.waitFor(() => expect(element.querySelectorAll('tbody tr')).toHaveLength(6));
});

test('it is worked again for what it shows and for nothing else', () => {
  const { desk, sheet, block, given } = createTestDesk(SHEET);
  const { cells } = createChart(desk, sheet, block('chart'));
  expect(cells).toEqual(expect.arrayContaining([given('axle').index, given('wide').index]));
});
