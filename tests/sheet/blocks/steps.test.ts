import fc from 'fast-check';
import { expect, test } from 'vitest';
import { faultsOf, readBlock } from './made-block.ts';

const idsOf = (...lines: readonly string[]) =>
  readBlock('steps', '', ...lines).steps.map(({ id }) => id);

test('each item of a list is a step, with its stressed words as Markdown', () => {
  const found = readBlock('steps', '"Before"', '- Measured **under** the head', '- Wound in');
  expect(found).toMatchObject({ title: 'Before', problems: [] });
  expect(found.steps.map(({ text }) => text)).toEqual(['Measured **under** the head', 'Wound in']);
  expect(found.steps[0]!.tokens.map(({ type }) => type)).toEqual(['text', 'strong', 'text']);
});

test('the id of a step is made from its words, so that a tick survives a reordering', () => {
  expect(idsOf('- Wind the collar *in*', '- Über 3 N·m?')).toEqual([
    'wind-the-collar-in',
    'über-3-n-m',
  ]);
  expect(idsOf('- Über 3 N·m?', '- Wind the collar *in*')).toEqual([
    'über-3-n-m',
    'wind-the-collar-in',
  ]);
});

test('the same words again get a number, also where a step has that number in its words', () => {
  expect(idsOf('- Turn', '- Turn', '- Turn')).toEqual(['turn', 'turn-2', 'turn-3']);
  expect(idsOf('- Turn', '- Turn', '- Turn 2')).toEqual(['turn', 'turn-2', 'turn-2-2']);
});

test('no two steps of a block share an id', () => {
  const words = fc.constantFrom('turn', 'turn 2', 'turn-2', '2', 'Turn!', 'turn 2 2');
  fc.assert(
    fc.property(fc.array(words, { minLength: 1, maxLength: 8 }), (steps) => {
      const ids = idsOf(...steps.map((step) => `- ${step}`));
      expect(new Set(ids).size).toBe(steps.length);
    }),
  );
});

test('numbers, stars and several lists make steps alike', () => {
  expect(idsOf('1. One', '2. Two', '', 'then', '', '* Three')).toEqual(['one', 'two', 'three']);
});

test.each([
  ['nothing', []],
  ['words that are no list', ['Wind the collar in.']],
])('steps without a step are a fault: %s', (_, lines) => {
  expect(faultsOf(readBlock('steps', '"Before"', ...lines))).toEqual(['missing-line 1:10']);
});

test('steps without a title, and with a heading that cannot be read, are called steps', () => {
  expect(readBlock('steps', '', '- One').title).toBe('Steps');
  const found = readBlock('steps', 'Before', '- One');
  expect(faultsOf(found)).toEqual(['unknown-clause 1:10']);
  expect(found).toMatchObject({ title: 'Steps', steps: [{ id: 'one' }] });
});
