import { expect, test, vi } from 'vitest';
import { createWork } from '../../src/page/work.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `
\`\`\`given
speed = 60 mph "Speed"
\`\`\`

\`\`\`work
load = road_load(speed, rolling: 32 lbf, air: 0.5 kg/m) "Road load" as lbf to 1
twice = max(load, 2 * road_load(speed, 0 N, air: road_load(speed, 1 N, air: 0 kg/m) / 1 N * 1 kg/m)) "Twice" as lbf
size = abs(load) "Size" as lbf
\`\`\`
`;

function notesOf(name: string): readonly Element[] {
  const made = createTestDesk(SHEET);
  const element = made.show(createWork(made.desk, made.sheet, made.block('work')));
  const row = element.querySelector(`#${name}`)!.closest('.row')!;
  return [...row.querySelectorAll('.about-function')];
}

test('a formula of the trade tells where it comes from and what it is good for', async () => {
  const [note, ...others] = notesOf('load');
  expect(others).toEqual([]);
  expect(textOf(note!.querySelector('summary'))).toBe('Where does “road load” come from?');
  (note as HTMLDetailsElement).open = true;
  await vi.waitFor(() => expect(note!.querySelector('code')).not.toBeNull(), 20_000);
  expect(textOf(note!)).toContain('Source: rolling 0.01 (1 + V/147 ft/s)');
  expect(textOf(note!)).toContain('Good for: hard level road, still air');
  expect(textOf(note!.querySelector('code'))).toMatch(/^road_load\(20 m\/s/);
});

test('it is shut until someone asks', () => {
  expect((notesOf('load')[0] as HTMLDetailsElement).open).toBe(false);
});

test('a formula used twice in a line tells once', () => {
  expect(notesOf('twice')).toHaveLength(1);
});

test('a function of the language has nothing to tell', () => {
  expect(notesOf('size')).toEqual([]);
});
