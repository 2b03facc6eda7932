import { expect, test } from 'vitest';
import { printText } from '../../../src/language/print-text.ts';
import { faultsOf, readBlock } from './made-block.ts';

const ASK = 'ask gap within 0.001 in "How wide is the gap?"';

test('a question, what varies, and the usual mistakes', () => {
  const { practice, problems } = readBlock(
    'practice',
    '"The gap"',
    'vary finger from 3.1 in to 3.3 in to 0.005',
    ASK,
    'vary bearing',
    'mistake finger - bearing - edge "The straightedge lay on both sides."',
    'mistake -gap "Taken the wrong way round."',
  );
  expect(problems).toEqual([]);
  expect(practice).toMatchObject({
    title: 'The gap',
    ask: { name: 'gap' },
    question: 'How wide is the gap?',
    vary: [{ name: { name: 'finger' }, resolution: 0.005 }, { name: { name: 'bearing' } }],
    mistakes: [
      { sentence: 'The straightedge lay on both sides.' },
      { sentence: 'Taken the wrong way round.' },
    ],
  });
  expect(printText(practice!.within)).toBe('0.001 in');
  expect(practice!.mistakes.map(({ expression }) => printText(expression))).toEqual([
    'finger - bearing - edge',
    '-gap',
  ]);
  expect(practice!.vary[1]).not.toHaveProperty('range');
});

test('the question alone is enough', () => {
  const { practice } = readBlock('practice', '"The gap"', ASK);
  expect(practice).toMatchObject({ vary: [], mistakes: [] });
});

test.each([
  ['no title', '', [ASK], 'missing-name 1:12'],
  ['no question', '"The gap"', ['vary finger'], 'missing-line 1:13'],
  ['two questions', '"The gap"', [ASK, ASK], 'repeated-clause 3:5'],
  ['a question without its words', '"The gap"', ['ask gap within 1 mm'], 'unexpected-end 2:20'],
  ['a question without a tolerance', '"The gap"', ['ask gap "How wide?"'], 'unexpected-end 2:20'],
  ['a mistake that tells nothing', '"The gap"', [ASK, 'mistake gap'], 'unexpected-end 3:12'],
  ['a line of another kind', '"The gap"', [ASK, 'hint "Subtract."'], 'unexpected-word 3:1'],
  ['a varied formula', '"The gap"', [ASK, 'vary 2 * gap'], 'unexpected-word 3:6'],
])('%s leaves no question', (_, info, lines, fault) => {
  const found = readBlock('practice', info, ...lines);
  expect(faultsOf(found)).toEqual([fault]);
  expect(found.practice).toBeUndefined();
});
