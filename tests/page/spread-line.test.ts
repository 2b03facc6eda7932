import { expect, test } from 'vitest';
import { createSpreadLine } from '../../src/page/spread-line.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `# A
\`\`\`given
finger = 3.200 ± 0.003 in "Finger reading" to 0.001
bearing = 3.000 ± 0.001 in "Bearing reading" to 0.001
sure = 2 in
\`\`\`
\`\`\`work
gap = finger - bearing "Gap" as in to 0.001
gaps = [1, 2] * gap "Gaps" as in to 0.001
mixed = [finger, 2 * bearing] "Mixed" as in to 0.001
twice = 2 * sure
\`\`\`
`;

async function open(name: string): Promise<HTMLElement | undefined> {
  const { desk } = createTestDesk(SHEET);
  await desk.settled();
  return createSpreadLine(desk, desk.book.find('10-sheet', name)!);
}

test('how sure a result is stands in one line', async () => {
  const line = await open('gap');
  expect(textOf(line!.querySelector('p'))).toMatch(/worst case ± 0\.004/);
});

test('behind it stands whose doubt it is, by share of the variance', async () => {
  const line = await open('gap');
  const rows = [...line!.querySelectorAll('.shares tr')].map(textOf);
  expect(rows).toEqual(['finger90 %', 'bearing10 %']);
  expect(line!.querySelector('meter')?.getAttribute('aria-label')).toBe('Share of finger');
});

test('a list tells its worst cases one by one', async () => {
  expect(textOf(await open('gaps'))).toMatch(/worst case ± 0\.004.* ± 0\.008/);
});

test('each number of a list tells what matters most to it, and the choice stays', async () => {
  const line = await open('mixed');
  const select = line!.querySelector('select')!;
  expect([...select.options].map(({ text }) => text)).toEqual(['1', '2']);
  const rows = (of: HTMLElement) => [...of.querySelectorAll('.shares tr')].map(textOf);
  expect(rows(line!)).toEqual(['finger100 %', 'bearingnothing']);
  select.value = '1';
  select.dispatchEvent(new Event('change'));
  expect(rows(line!)).toEqual(['bearing100 %', 'fingernothing']);
  expect(textOf(line!.querySelector('details > div p'))).toMatch(/^worst case ± 0\.002/);
});

test('a result that rests on no doubt says nothing', async () => {
  expect(await open('twice')).toBeUndefined();
});

test('opened, it stays open while the readings change', async () => {
  const { desk } = createTestDesk(SHEET);
  await desk.settled();
  const gap = desk.book.find('10-sheet', 'gap')!;
  const before = createSpreadLine(desk, gap)!;
  document.body.replaceChildren(before);
  before.querySelector('summary')!.click();
  await expect.poll(() => createSpreadLine(desk, gap)!.querySelector('details')!.open).toBe(true);
});
