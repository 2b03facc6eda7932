import { expect, test } from 'vitest';
import { attemptLink, LinkFault, linkFault } from '../../src/sheet/link-fault.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';

const SHEET = readSheet('one\ntwo three\n', 'made.md');
const WHERE = { from: SHEET.source.indexOf('three'), to: SHEET.source.indexOf('three') + 5 };

test('what was linked comes back, nothing included', () => {
  expect(attemptLink(SHEET, () => 3)).toEqual({ linked: 3 });
  expect(attemptLink(SHEET, () => undefined)).toEqual({ linked: undefined });
});

test('the first fault ends the linking, and has its place in the sheet', () => {
  const found = attemptLink(SHEET, () => {
    throw linkFault('missing-range', WHERE, { name: 'three' });
  });
  expect(found).toMatchObject({
    problem: { code: 'missing-range', place: { file: 'made.md', line: 2, column: 5 } },
  });
});

test('a fault that has its place already keeps it', () => {
  const place = { file: 'other.md', line: 7, column: 1 };
  const { problem } = linkFault('missing-range', WHERE, { name: 'three' });
  const found = attemptLink(SHEET, () => {
    throw new LinkFault({ ...problem, place });
  });
  expect(found).toMatchObject({ problem: { place } });
});

test('an error of the program is not taken for one of the sheet', () => {
  const crash = () => {
    throw new TypeError('a slip');
  };
  expect(() => attemptLink(SHEET, crash)).toThrow(TypeError);
});
