import { describe, expect, test } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { SHEETS } from './made-sheets.ts';
import { type MadeTerminal, makeTerminal } from './made-terminal.ts';

interface Charted {
  readonly code: number;
  readonly terminal: MadeTerminal;
}

async function chart(...typed: readonly string[]): Promise<Charted> {
  const terminal = makeTerminal(SHEETS);
  return { code: await run(['chart', '10-shaft', ...typed], terminal), terminal };
}

test('a table goes to a file', async () => {
  const { code, terminal } = await chart('Out against ratio', '--csv', 'a.csv');
  expect(code).toBe(0);
  expect(terminal.out()).toBe('');
  const rows = terminal.files.get('a.csv')!.trim().split('\r\n');
  expect(rows[0]).toBe('Ratio,Out (rpm)');
  expect(rows[1]).toMatch(/^1,(2000|1999\.9|2000\.0)/);
  expect(rows.at(-1)).toMatch(/^4,(500|499\.9|500\.0)/);
});

test('a drawing goes to the terminal as XML', async () => {
  const { code, terminal } = await chart('Out against ratio', '--svg', '-');
  expect(code).toBe(0);
  expect(terminal.out()).toMatch(
    /^<\?xml version="1.0" encoding="UTF-8"\?>\n<svg [\s\S]*<\/svg>\n$/,
  );
  expect(terminal.out()).toContain('xmlns="http://www.w3.org/2000/svg"');
  expect(terminal.out()).toMatch(/<title[^>]*>Out against ratio<\/title>/);
  expect(terminal.out()).not.toMatch(/NaN|undefined|var\(|currentColor/);
});

test('the title may be in capitals or not', async () => {
  const { code, terminal } = await chart(' OUT against Ratio ', '--csv', '-');
  expect(code).toBe(0);
  expect(terminal.out()).toMatch(/^Ratio,Out/);
});

test('both files are written when both are named', async () => {
  const { code, terminal } = await chart('Out against ratio', '--csv', 'a.csv', '--svg', 'a.svg');
  expect(code).toBe(0);
  expect([...terminal.files.keys()]).toEqual(expect.arrayContaining(['a.csv', 'a.svg']));
});

test('what is entered moves the line', async () => {
  const { terminal } = await chart('Out against ratio', '--csv', '-', '--given', 'spin=1000');
  expect(terminal.out()).toMatch(/\r\n1,(1000|999\.9|1000\.0)/);
});

test('a result over two values is drawn as a map, and written as its grid', async () => {
  const { code, terminal } = await chart('Out on a map', '--csv', 'a.csv', '--svg', 'a.svg');
  expect(code).toBe(0);
  expect(terminal.files.get('a.svg')).toMatch(/<title[^>]*>Out on a map<\/title>/);
  const [head, first, ...more] = terminal.files.get('a.csv')!.trim().split('\r\n');
  expect(head).toBe('Ratio,Turning speed (rpm),Out (rpm)');
  expect(first!.split(',').map(Number)).toEqual([1, 1000, expect.closeTo(1000, 6)]);
  expect(more.at(-1)!.split(',').map(Number)).toEqual([4, 2000, expect.closeTo(500, 6)]);
});

describe('a chart that cannot be drawn', () => {
  test('says which reading it waits for', async () => {
    const { code, terminal } = await chart('Room against spin', '--svg', '-');
    expect(code).toBe(1);
    expect(terminal.out()).toBe('');
    expect(terminal.errors()).toMatch(/10-shaft\.md:13:\d+: waits for spare, which is blank/);
  });

  test('says which entry was refused', async () => {
    const { code, terminal } = await chart('Out against ratio', '--svg', 'a', '--given', 'spin=x');
    expect(code).toBe(1);
    expect(terminal.files.has('a')).toBe(false);
    expect(terminal.errors()).toMatch(/^--given spin:1:1: "x" is not/);
  });
});

describe('wrong use', () => {
  test('a title that is nearly right is offered', async () => {
    const { code, terminal } = await chart('Out against rato', '--svg', '-');
    expect(code).toBe(2);
    expect(terminal.errors()).toContain('no chart "Out against rato"; try "Out against ratio"\n');
  });

  test('a title that is nothing like any offers all', async () => {
    const { terminal } = await chart('Torque', '--svg', '-');
    expect(terminal.errors()).toContain('try "Out against ratio", "Room against spin"');
  });

  test('a sheet without charts says so', async () => {
    const terminal = makeTerminal(SHEETS);
    expect(await run(['chart', 'broken', 'Torque', '--svg', '-'], terminal)).toBe(2);
    expect(terminal.errors()).toContain('sheet broken has no chart "Torque"; it has none');
  });

  test('a file that cannot be written is named', async () => {
    const { code, terminal } = await chart('Out against ratio', '--svg', 'closed/a.svg');
    expect(code).toBe(2);
    expect(terminal.errors()).toContain('cannot write closed/a.svg: EACCES');
  });
});
