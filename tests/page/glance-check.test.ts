import { expect, test } from 'vitest';
import { glanceAtCheck } from '../../src/page/glance-check.ts';
import { createTestDesk } from './test-desk.ts';

const GIVENS = `# A
\`\`\`given
gap = 0.165 in to 0.001
plays = [0.010, 0.030] in to 0.001
later = blank in
bolts = "M12"
\`\`\`
`;

const CASES = [
  ['gap between 0.125 in and 0.200 in', 'pass', '0.165 in', 'inside by 0.035 in'],
  ['gap at least 0.200 in', 'fail', '0.165 in', 'too little by 0.035 in'],
  ['gap at most 0.100 in', 'fail', '0.165 in', 'too much by 0.065 in'],
  ['gap is 0.165 in', 'pass', '0.165 in', 'fits'],
  ['plays at most 0.020 in', 'fail', 'no. 2: 0.030 in', 'too much by 0.010 in'],
  ['plays at most 0.050 in', 'pass', 'no. 2: 0.030 in', 'inside by 0.020 in'],
  ['later at most 1 in', 'unknown', '–', 'cannot be told yet'],
  ['bolts is "M12"', 'pass', 'M12', 'fits'],
  ['bolts is "M10"', 'fail', 'M12', 'differs'],
] as const;

test.each(CASES)('%s is seen to %s', (line, verdict, value, words) => {
  const { desk } = createTestDesk(`${GIVENS}\n\`\`\`check\n${line}\n\`\`\`\n`);
  expect(desk.book.problems).toEqual([]);
  const glance = glanceAtCheck(desk, desk.book.checks[0]!);
  const plain = (text: string) => text.replaceAll('\u00a0', ' ');
  expect({ ...glance, value: plain(glance.value), words: plain(glance.words) }).toEqual({
    verdict,
    value,
    words,
  });
});
