import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clearRescue, findRescue, leaveRescue } from '../../src/job/rescue.ts';
import { makeShelf } from './made-shelf.ts';

test('word that is left of a job is found under its name, and under no other', () => {
  fc.assert(
    fc.property(fc.nat(), fc.string(), (revision, text) => {
      const shelf = makeShelf();
      leaveRescue(shelf, 'a', { revision, text });
      expect(findRescue(shelf, 'a')).toEqual({ revision, text });
      expect(findRescue(shelf, 'b')).toBeUndefined();
    }),
  );
});

test('the last word counts, until it is cleared', () => {
  const shelf = makeShelf();
  leaveRescue(shelf, 'a', { revision: 1, text: '{}' });
  leaveRescue(shelf, 'a', { revision: 2, text: '{\n}' });
  expect(findRescue(shelf, 'a')).toEqual({ revision: 2, text: '{\n}' });
  clearRescue(shelf, 'a');
  expect(findRescue(shelf, 'a')).toBeUndefined();
});

test('what something else put there is no word of a job', () => {
  const shelf = makeShelf();
  shelf.setItem('layshaft/rescue/a', 'hello');
  expect(findRescue(shelf, 'a')).toBeUndefined();
});
