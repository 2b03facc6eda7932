import { beforeAll, expect, test } from 'vitest';
import { createElement } from '../../src/drawing/svg.ts';
import { textWidth, type Weight } from '../../src/drawing/text-width.ts';
import { loadPlate, show } from '../support/drawn.ts';

beforeAll(loadPlate);

const TEXTS = [
  'Housing face to finger tips',
  '3.212 in',
  '− 0.250 in, off the scale',
  '111111 000000',
  'WWWWW MMMMM mmmmm',
  'iiiii lllll .....',
  'Drehzahl über Größe, Ångström, façade',
  '½ ¾ 3 3/64″ ± ≈ ≤ ≥ × ÷ · → Ω μ',
  'AVATAR To We (brackets) [square] {curly}',
  'lbf·ft N·m kg/m³ °C 12 %',
  '10\u202f000\u00a0rpm',
  '日本語',
];

function drawnWidth(text: string, weight: Weight): number {
  const element = createElement(
    { document },
    'text',
    {
      'font-size': 100,
      'font-weight': weight,
      'font-variant': 'tabular-nums',
      'font-family': "'Atkinson Hyperlegible Next'",
    },
    [text],
  );
  show(createElement({ document }, 'svg', { width: 10, height: 10 }, [element]));
  return (element as SVGTextElement).getComputedTextLength();
}

test.each(TEXTS.flatMap((text) => [[text, 400] as const, [text, 700] as const]))(
  'the estimate for "%s" at weight %i is never narrower than what is drawn',
  (text, weight) => {
    expect(textWidth(text, 100, weight)).toBeGreaterThanOrEqual(drawnWidth(text, weight));
  },
);

test.each(TEXTS.slice(0, 3))('the estimate for "%s" is not wasteful', (text) => {
  expect(textWidth(text, 100)).toBeLessThan(drawnWidth(text, 400) * 1.15);
});

test('each letter of the keyboard is estimated wide enough', () => {
  const letters = Array.from({ length: 95 }, (_, i) => String.fromCharCode(32 + i));
  const narrow = letters.flatMap((letter) =>
    ([400, 700] as const)
      .filter((weight) => textWidth(letter, 100, weight) < drawnWidth(letter, weight))
      .map((weight) => `${letter} ${weight}`),
  );
  expect(narrow).toEqual([]);
});

test('no text has no width', () => {
  expect(textWidth('', 13)).toBe(0);
});
