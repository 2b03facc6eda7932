import { expect, test } from 'vitest';
import {
  isAttempts,
  isCaption,
  isEntry,
  isForeignSheet,
  isTick,
  isVariant,
  type JobIssue,
  readFlat,
  readItems,
  readNested,
  readText,
} from '../../src/job/read-fields.ts';

test('what is whole is kept, what is not is listed with its path', () => {
  const issues: JobIssue[] = [];
  const data = { a: { b: { text: '1' }, c: 3 }, d: 'x', e: { f: null } };
  expect(readNested(data, ['entries'], isEntry, issues)).toEqual({ a: { b: { text: '1' } } });
  expect(issues.map(({ path }) => path)).toEqual([
    ['entries', 'd'],
    ['entries', 'a', 'c'],
    ['entries', 'e', 'f'],
  ]);
});

test('unknown fields of an entry are kept', () => {
  const data = { a: { b: { text: '1', colour: 'red' } } };
  expect(readNested(data, ['entries'], isEntry, [])).toEqual(data);
});

test('a record, a list and a text that are something else are told', () => {
  const issues: JobIssue[] = [];
  expect(readFlat([], ['sheets'], isEntry, issues)).toEqual({});
  expect(readItems({}, ['variants'], isVariant, issues)).toEqual([]);
  expect(readText(3, ['title'], 'none', issues)).toBe('none');
  expect(issues.map(({ message }) => message)).toEqual([
    'should be a record',
    'should be a list',
    'should be a text',
  ]);
});

test('what is not there is nothing wrong', () => {
  const issues: JobIssue[] = [];
  readFlat(undefined, [], isEntry, issues);
  readItems(undefined, [], isVariant, issues);
  readText(undefined, [], '', issues);
  expect(issues).toEqual([]);
});

test.each([
  ['an entry', isEntry, { text: '1', unit: 'in' }, { unit: 'in' }],
  ['a tick', isTick, { on: '2026-03-14' }, { on: '2026-03-14', by: 3 }],
  ['a caption', isCaption, {}, { alt: 1 }],
  ['a foreign sheet', isForeignSheet, { version: 'a', text: '' }, { version: 'a' }],
  ['attempts', isAttempts, [{ seed: 1, typed: '', told: '', seconds: 1 }], [{ seed: 1 }]],
  [
    'a variant',
    isVariant,
    { name: 'a', entries: { b: { c: '1' } } },
    { name: 'a', entries: { b: 1 } },
  ],
])('%s is told from what is none', (_, is, good, bad) => {
  expect(is(good)).toBe(true);
  expect(is(bad)).toBe(false);
  expect(is(null)).toBe(false);
});
