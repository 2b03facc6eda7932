import { expect, test } from 'vitest';
import { plainBlanks } from '../../src/cli/plain-blanks.ts';

test('blanks that do not break become ordinary ones, all else stays', () => {
  expect(plainBlanks('10\u202f050\u00a0rpm ± 3⅛\n')).toBe('10 050 rpm ± 3⅛\n');
});
