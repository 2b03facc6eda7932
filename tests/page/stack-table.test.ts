import { expect, test, vi } from 'vitest';
import { createStackTable } from '../../src/page/stack-table.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `
\`\`\`given
deep = 1 ± 0.003 in "Deep"
high = 2 ± 0.004 in "High"
\`\`\`

\`\`\`stack whole "Whole" as in to 0.001
+ deep
+ high
\`\`\`
`;

test('three ways of adding up stand one beside the other, and follow what changes', async () => {
  const { desk, sheet, given, show } = createTestDesk(SHEET);
  const element = show(createStackTable(desk, desk.book.find(sheet.name, 'whole')!));
  const rows = () =>
    [...element.querySelectorAll('tbody tr')].map((row) => [...row.children].map(textOf));
  expect(rows()[0]).toEqual(['Worst case: all to one side', '2.9930 in', '3.0070 in', '0.0070 in']);
  expect(rows()[1]).toEqual(['Root sum square', '2.9950 in', '3.0050 in', '0.0050 in']);
  expect(rows()[2]![0]).toBe('Monte Carlo, 95 % of 20480 draws, seed 1');
  desk.enter(given('deep'), { text: '1' });
  await vi.waitFor(() => expect(rows()[0]![3]).toBe('0.0040 in'));
  desk.enter(given('high'), { text: '2' });
  await vi.waitFor(() =>
    expect(textOf(element)).toContain('Nothing in this stack has a tolerance'),
  );
});
