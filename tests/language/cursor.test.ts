import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createCursor, type Mode, ReadFault, type Token } from '../../src/language/cursor.ts';
import { printText } from '../../src/language/print-text.ts';
import { anyTree } from './made-trees.ts';

function tokensOf(source: string, mode: Mode = 'sheet', from = 0, to = source.length): Token[] {
  const cursor = createCursor(source, mode, from, to);
  const tokens: Token[] = [];
  for (let token = cursor.take(); token.type !== 'end'; token = cursor.take()) tokens.push(token);
  return tokens;
}

const sketch = (source: string, mode?: Mode) =>
  tokensOf(source, mode).map((token) => `${token.type} ${source.slice(token.from, token.to)}`);

function faultOf(source: string): string | undefined {
  try {
    tokensOf(source);
    return undefined;
  } catch (fault) {
    if (fault instanceof ReadFault) return fault.problem.code;
    throw fault;
  }
}

describe('tokens', () => {
  test('numbers take their units along', () => {
    expect(sketch('3 1/8 in + gap/2')).toEqual([
      'quantity 3 1/8 in',
      'symbol +',
      'word gap',
      'symbol /',
      'quantity 2',
    ]);
  });

  test('signs of two characters are one token', () => {
    expect(sketch('<= >= <> < =')).toEqual([
      'symbol <=',
      'symbol >=',
      'symbol <>',
      'symbol <',
      'symbol =',
    ]);
  });

  test('signs from elsewhere mean the plain ones', () => {
    const texts = tokensOf('× ÷ − · ≤ ≥ ≠').map((token) => ('text' in token ? token.text : ''));
    expect(texts).toEqual(['*', '/', '-', '*', '<=', '>=', '<>']);
  });

  test('a note ends at its line', () => {
    expect(sketch('a # note + b\n+ c')).toEqual(['word a', 'symbol +', 'word c']);
  });

  test('in an entry there are no notes and no texts', () => {
    expect(() => tokensOf('3 # note', 'entry')).toThrow(ReadFault);
  });

  test('an empty text is at its end', () => {
    const cursor = createCursor('', 'sheet');
    expect(cursor.peek()).toEqual({ type: 'end', from: 0, to: 0 });
    expect(cursor.take()).toEqual(cursor.take());
  });
});

describe('a stretch of a longer text', () => {
  const source = 'xx gap + 2 in yy';

  test('counts its places in the whole', () => {
    const [first, , last] = tokensOf(source, 'sheet', 3, 13);
    expect([first!.from, last!.to]).toEqual([3, 13]);
  });

  test('does not look beyond its end', () => {
    expect(tokensOf('3 inch', 'sheet', 0, 4)).toHaveLength(1);
    expect(tokensOf('3 in # note', 'sheet', 0, 6)).toHaveLength(1);
  });

  test('peeking takes nothing, moving goes on from there', () => {
    const cursor = createCursor(source, 'sheet');
    expect(cursor.peek()).toBe(cursor.peek());
    cursor.moveTo(7);
    expect(cursor.position()).toBe(7);
    expect(cursor.take()).toMatchObject({ type: 'symbol', text: '+' });
  });
});

describe('what cannot be read', () => {
  test.each([
    ['"open', 'unclosed-text'],
    ['3 in & 2', 'unreadable-character'],
    ['{', 'unreadable-character'],
    ['ä', 'unreadable-character'],
    ['\u{1F527}', 'unreadable-character'],
    ['\u0000', 'unreadable-character'],
    ['1.2.3', 'malformed-number'],
    ['3furlong', 'unknown-unit'],
  ])('%s is %s', (source, code) => {
    expect(faultOf(source)).toBe(code);
  });
});

test('the texts of the tokens and what stands between them rejoin to the source', () => {
  fc.assert(
    fc.property(anyTree(), (tree) => {
      const source = printText(tree);
      let rejoined = '';
      for (const { from, to } of tokensOf(source)) {
        const between = source.slice(rejoined.length, from);
        expect({ source, between: between.trim() }).toEqual({ source, between: '' });
        rejoined += between + source.slice(from, to);
      }
      expect(rejoined).toBe(source);
    }),
    { numRuns: 300 },
  );
});

test('any text is read to its end or refused with a problem', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), (source) => {
      const code = faultOf(source);
      expect(code === undefined || code.length > 0).toBe(true);
    }),
    { numRuns: 1000 },
  );
});
