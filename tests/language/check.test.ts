import { describe, expect, test } from 'vitest';
import { checkExpression } from '../../src/language/check.ts';
import { nameKind } from '../../src/language/kind.ts';
import { createScope, makeFormula, makeNames, readTree } from './made-formula.ts';

describe('checking a formula', () => {
  test('gives every part its kind', () => {
    const { tree, checked } = makeFormula('gap * 2 < 1 ft', { gap: '3 in' });
    const found = [...checked.kinds].map(
      ([{ from, to }, kind]) => [`${from}:${to}`, nameKind(kind)] as const,
    );
    expect(new Map(found)).toEqual(
      new Map([
        ['0:3', 'length'],
        ['6:7', 'plain number'],
        ['0:7', 'length'],
        ['10:14', 'length'],
        ['0:14', 'true or false'],
      ]),
    );
    expect(checked.kinds.get(tree)).toEqual({ type: 'truth' });
  });

  test('tells every fault, in the order of reading', () => {
    const { problems, kind } = checkExpression(
      readTree('[ghost, 1 in + 1 s, unknown(2)]'),
      createScope(makeNames({})),
      '[ghost, 1 in + 1 s, unknown(2)]',
    );
    expect(problems.map(({ code, from }) => [code, from])).toEqual([
      ['unknown-name', 1],
      ['dimension-mismatch', 8],
      ['unknown-function', 20],
    ]);
    expect(kind).toBeUndefined();
  });

  test('a cell that is at fault itself leaves no kind and no problem', () => {
    const scope = {
      ...createScope(makeNames({})),
      lookUp: (name: string) => (name === 'broken' ? { kind: undefined } : undefined),
    };
    const source = 'broken + 1 in';
    const { kind, problems } = checkExpression(readTree(source), scope, source);
    expect({ kind, problems }).toEqual({ kind: undefined, problems: [] });
  });

  test('near names are offered', () => {
    const { checked } = makeFormula('wantd_gap', { wanted_gap: '3 in', gap: '3 in' });
    expect(checked.problems[0]!.message).toBe(
      'no value is called wantd_gap; did you mean wanted_gap?',
    );
  });

  test('a sum of 1 000 parts is no trouble', () => {
    const source = Array.from({ length: 1_000 }, () => 'gap').join(' + ');
    expect(makeFormula(source, { gap: '1 in' }).value).toBeCloseTo(25.4, 9);
  });
});
