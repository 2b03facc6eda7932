import { expect, test } from 'vitest';
import { createCheckTable } from '../../src/page/check-table.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `
\`\`\`given
hub = 26 "Splines in the hub" to 1
shaft = 26 "Splines on the shaft" to 1
room = 0.4 in "Room" to 0.1
pattern = "M12" "Bolts"
drive = blank in "Drive" to 0.1
\`\`\`

\`\`\`check table "What fits"
hub is shaft "Splines"
  below "Fewer in the hub."
  above "More in the hub."
  source "counted"
room between 0.2 in and 0.5 in "Room for a bearing"
  below "No room."
  above "Too much room."
  source "common practice, no source"
pattern is "M12" "Pattern"
  below "Another housing."
drive at least 1 in "Drive"
  below "Too short."
\`\`\`
`;

function show() {
  const made = createTestDesk(SHEET);
  const element = made.show(createCheckTable(made.desk, made.block('check')));
  const rows = () =>
    [...element.querySelectorAll('tbody tr')].map((row) =>
      [...row.children].map((cell) => textOf(cell).trim()),
    );
  const enter = async (name: string, text: string) => {
    made.desk.enter(made.given(name), { text });
    await made.desk.settled();
  };
  return { element, rows, enter };
}

test('each check is a line: this, against that, and whether it fits', () => {
  expect(show().rows()).toEqual([
    ['Splines', '26', '26', 'fits'],
    ['Room for a bearing', '0.4 in', '0.2 in to 0.5 in', 'inside'],
    ['Pattern', 'M12', 'M12', 'fits'],
    ['Drive', '–', 'at least 1.0 in', 'unknown'],
  ]);
});

test('what does not fit says below its line what that means', async () => {
  const { rows, enter } = show();
  await enter('hub', '10');
  expect(rows().slice(0, 2)).toEqual([
    ['Splines', '10', '26', 'does not fit'],
    ['Fewer in the hub.'],
  ]);
  await enter('hub', '26');
  await enter('pattern', 'M10');
  expect(rows().slice(2, 4)).toEqual([
    ['Pattern', 'M10', 'M12', 'does not fit'],
    ['Another housing.'],
  ]);
});

test('a window is left on one side or the other, and what was blank is decided when it is there', async () => {
  const { rows, enter } = show();
  await enter('room', '0.6');
  expect(rows()[2]).toEqual(['Too much room.']);
  await enter('drive', '0.5');
  expect(rows().slice(4)).toEqual([
    ['Drive', '0.5 in', 'at least 1.0 in', 'outside'],
    ['Too short.'],
  ]);
});

test('where the windows come from stands together below, shut', () => {
  const sources = show().element.querySelector('details')!;
  expect(sources.open).toBe(false);
  expect([...sources.querySelectorAll('li')].map(textOf)).toEqual([
    'Splines: counted',
    'Room for a bearing: common practice, no source',
  ]);
});
