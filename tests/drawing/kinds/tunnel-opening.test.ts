import { beforeAll, describe, expect, test } from 'vitest';
import { TUNNEL_OPENING } from '../../../src/drawing/kinds/tunnel-opening.ts';
import { createData, type Slots } from '../../support/drawing-data.ts';
import { findCut, findOverlaps, loadPlate, show } from '../../support/drawn.ts';
import { ESTATE, INCH, TUNNEL_CASES, TUNNEL_UNITS } from '../../support/tunnel-cases.ts';

beforeAll(loadPlate);

const draw = (slots: Slots, width: number) =>
  TUNNEL_OPENING.draw(createData('Opening', slots, TUNNEL_UNITS), {
    document,
    width,
    idPrefix: 'o',
  });

test.each(
  TUNNEL_CASES.flatMap(([name, slots]) =>
    [300, 390, 700, 1000].map((w) => [name, w, slots] as const),
  ),
)('%s at %i px: nothing is cut and nothing overlaps', (_, width, slots) => {
  const svg = show(draw(slots, width));
  expect(findCut(svg)).toEqual([]);
  expect(findOverlaps(svg)).toEqual([]);
  expect(svg.outerHTML).not.toContain('NaN');
});

/** An attribute of the one part of that name. */
function read(svg: SVGElement, part: string, attribute: string): number {
  return Number(svg.querySelector(`[data-part="${part}"]`)!.getAttribute(attribute));
}

function spanOf(svg: SVGElement, part: string): number {
  return Math.abs(read(svg, part, 'data-to') - read(svg, part, 'data-from'));
}

describe('to scale', () => {
  test.each([300, 390, 1000])('at %i px all lengths share one scale, both ways', (width) => {
    const svg = draw(ESTATE, width);
    const scale = spanOf(svg, 'tunnel_width') / 5.5;
    for (const [part, inches] of [
      ['hole_width', 3],
      ['bezel_width', 4.5],
      ['opening-length', 3.26],
      ['bezel-length', 5.5],
      ['to-front-centre', 6.12],
      ['to-rear-centre', 5.86],
    ] as const)
      expect(spanOf(svg, part) / scale, part).toBeCloseTo(inches, 1);
    expect(read(svg, 'least', 'width') / scale).toBeCloseTo(2.58, 1);
    expect(read(svg, 'hole', 'height') / scale).toBeCloseTo(3.26, 1);
    expect(read(svg, 'hole', 'rx') / scale).toBeCloseTo(1.5, 1);
    expect(read(svg, 'lever', 'ry') / scale).toBeCloseTo(0.38, 1);
  });

  test('a saw’s centre stands as far from the datum as its dimension says', () => {
    const svg = draw(ESTATE, 700);
    const [front, rear] = [...svg.querySelectorAll('[data-part="centre"]')].map((cross) =>
      Number(cross.getAttribute('data-y')),
    );
    const datum = read(svg, 'datum', 'data-y');
    expect(datum - front!).toBeCloseTo(spanOf(svg, 'to-front-centre'), 1);
    expect(datum - rear!).toBeCloseTo(spanOf(svg, 'to-rear-centre'), 1);
  });

  test('the front of the car is at the top: what lies further behind the datum lies lower', () => {
    const behind = { ...ESTATE, hole_front: 0.02, hole_rear: 0.1, bezel_front: 0.01 };
    const svg = draw({ ...behind, bezel_rear: 0.15, lever_back: undefined }, 700);
    expect(read(svg, 'hole', 'y')).toBeGreaterThan(read(svg, 'datum', 'data-y'));
  });

  test('each gear has its lever, on its place', () => {
    const levers = [...draw(ESTATE, 700).querySelectorAll('[data-part="lever"]')];
    expect(levers).toHaveLength(7);
    const [first, second, , , fifth] = levers.map((lever) =>
      ['cx', 'cy'].map((name) => Number(lever.getAttribute(name))),
    );
    expect(second![1]).toBeGreaterThan(first![1]!);
    expect(second![0]).toBeCloseTo(first![0]!, 6);
    expect(fifth![0]).toBeGreaterThan(first![0]!);
  });
});

test('an opening as long as it is wide has one centre', () => {
  const round = { ...ESTATE, hole_front: -7.5 * INCH, hole_rear: -4.5 * INCH };
  const svg = draw(round, 700);
  expect(svg.querySelectorAll('[data-part="centre"]')).toHaveLength(1);
  expect(svg.textContent).toContain('6.00\u00a0in datum to centre');
});

test('a lever that touches the metal is told in words and in the colour of danger', () => {
  const svg = draw({ ...ESTATE, hole_width: 1.2 * INCH }, 700);
  expect(svg.textContent).toContain('touches the metal in 1st, 2nd, 5th and R.');
  expect(svg.innerHTML).toContain('--warn');
  expect(draw(ESTATE, 700).innerHTML).not.toContain('--warn');
});

test('an opening that looks out from under the bezel is told', () => {
  const svg = draw({ ...ESTATE, bezel_rear: -5 * INCH }, 700);
  expect(svg.textContent).toContain('looks out from under it');
  expect(draw(ESTATE, 700).textContent).not.toContain('looks out');
});

test('a datum that is far off is pointed at, and said to be', () => {
  const far = { ...ESTATE, hole_front: 1, hole_rear: 1.08, bezel_front: 0.98, bezel_rear: 1.12 };
  const svg = draw({ ...far, lever_back: undefined }, 700);
  expect(svg.textContent).toContain('further off than it is drawn');
  expect(draw(ESTATE, 700).textContent).not.toContain('further off');
});

test('what is only assumed is said, and no dimension claims it', () => {
  const svg = draw({ ...ESTATE, hole_front: undefined }, 700);
  expect(svg.textContent).toContain('Not to scale');
  expect(svg.querySelector('[data-part="opening-length"]')).toBeNull();
  expect(draw(ESTATE, 700).textContent).not.toContain('Not to scale');
});

test('the description has the readings in words', () => {
  const words = TUNNEL_OPENING.describe(createData('Opening', ESTATE, TUNNEL_UNITS));
  expect(words).toContain('3.26\u00a0in long and 3.00\u00a0in wide');
  expect(words).toContain(
    'from 7.62\u00a0in ahead of the datum to 4.36\u00a0in ahead of the datum',
  );
});

test('it is an image with a name and a description of its own', () => {
  const svg = draw(ESTATE, 500);
  expect(svg.getAttribute('role')).toBe('img');
  expect(svg.querySelector('title')!.id).toBe('o-title');
  expect(svg.querySelector('desc')!.textContent).toContain('From above');
});
