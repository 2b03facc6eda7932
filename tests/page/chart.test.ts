import { expect, test, vi } from 'vitest';
import { createChart } from '../../src/page/chart.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `
\`\`\`given
wear = 0.035 in "Wear" from 0 in to 0.080 in
gap = 0.165 in "Gap"
other = 1 in "Other"
\`\`\`

\`\`\`work
left = gap - 3.5 * wear "Gap left" as in
\`\`\`

\`\`\`chart "Gap against wear"
left as in over wear from 0 in to 0.080 in
\`\`\`
`;

function show() {
  const test = createTestDesk(SHEET);
  const view = createChart(test.desk, test.sheet, test.block('chart'));
  const element = test.show(view);
  // The plotting library comes late, and later on a busy machine.
  const drawn = () =>
    vi.waitFor(() => expect(element.querySelector('svg')).not.toBeNull(), { timeout: 10_000 });
  return { ...test, view, element, drawn };
}

test('a chart is a figure with a title and a sentence', async () => {
  const { element, drawn } = show();
  await drawn();
  const caption = textOf(element.querySelector('figcaption'));
  expect(caption).toMatch(/^Gap against wear\. .*Gap left/i);
});

test('the numbers are a table one click away', async () => {
  const { element, drawn } = show();
  await drawn();
  expect(element.querySelector('table')).toBeNull();
  element.querySelector('details')!.open = true;
  await vi.waitFor(() => expect(element.querySelectorAll('tbody tr').length).toBeGreaterThan(5));
});

test('it is drawn again when what it shows is worked again, and only then', async () => {
  const { desk, given, view, element, drawn } = show();
  await drawn();
  expect(view.cells).not.toContain(given('other').index);
  const before = textOf(element.querySelector('figcaption'));
  desk.enter(given('gap'), { text: '0.190' });
  await vi.waitFor(() => expect(textOf(element.querySelector('figcaption'))).not.toBe(before));
});

test('a chart without values says so', async () => {
  const { desk, given, element, drawn } = show();
  await drawn();
  desk.enter(given('gap'), { text: '' });
  await vi.waitFor(() => expect(textOf(element.querySelector('figcaption'))).toMatch(/no value/));
});
