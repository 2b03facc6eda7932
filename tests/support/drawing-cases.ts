/** Gauges and chains that are hard to draw, for tests and for looking at. */
import type { ChainData } from '../../src/drawing/chain-data.ts';
import type { GaugeData, GaugeValue } from '../../src/drawing/gauge-data.ts';

const least = { value: 0.125, text: '0.125 in' };
const most = { value: 0.2, text: '0.200 in' };
const below = 'As the disc wears the fingers come back and ride the bearing: the clutch will slip.';
const above = 'The piston may run out of stroke before the clutch is free.';

function inches(...values: readonly number[]): readonly GaugeValue[] {
  return values.map((value) => ({
    value,
    text: Number.isNaN(value) ? '' : `${value.toFixed(3)} in`,
  }));
}

function labelled(...values: readonly number[]): readonly GaugeValue[] {
  return inches(...values).map((value, i) => ({ ...value, label: `reading ${i + 1}` }));
}

export const GAUGES: readonly (readonly [name: string, data: GaugeData])[] = [
  ['a value inside', { title: 'Gap', least, most, values: inches(0.165), below, above }],
  [
    'short words',
    { title: 'Gap', least, most, values: inches(0.13), below: 'rides', above: 'runs out' },
  ],
  ['a value below', { title: 'Gap', least, most, values: inches(0.1), below, above }],
  ['a value far above', { title: 'Gap', least, most, values: inches(0.9), below, above }],
  ['a value far below', { title: 'Gap', least, most, values: inches(-50), below, above }],
  ['a value not known', { title: 'Gap', least, most, values: inches(Number.NaN), below, above }],
  ['at least', { title: 'Reserve', least, values: inches(0.3), below }],
  ['at most', { title: 'Drop', most, values: inches(0.1), above }],
  ['a list', { title: 'List', least, most, values: labelled(0.11, 0.13, 0.16, 0.19, 0.3) }],
  [
    'a crowd',
    {
      title: 'Crowd',
      least,
      most,
      values: labelled(0.1, 0.1, 0.13, 0.131, 0.132, 0.133, 0.16, 0.2, 0.2, 0.2, 0.9, -0.9),
    },
  ],
  [
    'a list with gaps',
    { title: 'List', least, most, values: labelled(0.15, Number.NaN, 0.16, Number.NaN), below },
  ],
  ['limits at one point', { title: 'Gap', least, most: least, values: inches(0.125) }],
  ['limits the wrong way round', { title: 'Gap', least: most, most: least, values: inches(0.16) }],
  ['no limits', { title: 'Gap', values: inches(0.16) }],
  ['no values', { title: 'Gap', least, most, values: [] }],
  [
    'long labels',
    {
      title: 'Gap',
      least: { value: 1, text: '12345.678 lbf·ft of torque' },
      most: { value: 1.1, text: '98765.432 lbf·ft of torque' },
      values: [
        {
          label: 'Old three-speed automatic with the long tail shaft',
          value: 1,
          text: '12345 lbf·ft',
        },
        { label: 'Wide five-speed with the short tail shaft', value: 1.05, text: '23456 lbf·ft' },
      ],
      below,
      above,
    },
  ],
  [
    'a spread',
    {
      title: 'Gap',
      least,
      most,
      values: [
        { value: 0.19, text: '0.190 in', spread: { likely: [0.18, 0.2], worst: [0.1, 0.9] } },
      ],
    },
  ],
];

type Step = readonly [signed: number, label: string, text?: string];

function chain(title: string, steps: readonly Step[], total?: string): ChainData {
  const terms = steps.map(([signed, label, text]) => ({
    sign: signed < 0 || Object.is(signed, -0) ? (-1 as const) : (1 as const),
    value: Math.abs(signed),
    text: text ?? `${Math.abs(signed).toFixed(3)} in`,
    label,
  }));
  const value = terms.reduce((sum, term) => sum + term.sign * term.value, 0);
  const text = total ?? `${value.toFixed(3).replace('-', '−')} in`;
  return { title, terms, total: { label: 'Gap with the piston fully in', value, text } };
}

export const CHAINS: readonly (readonly [name: string, data: ChainData])[] = [
  [
    'the release bearing',
    chain('Gap', [
      [3.212, 'Housing face to finger tips'],
      [-0.25, 'straightedge on the housing'],
      [-3.047, 'Bearing face to gearbox face'],
      [0.25, 'straightedge'],
    ]),
  ],
  [
    'a negative sum',
    chain('Gap', [
      [1, 'Finger reading'],
      [-1.4, 'Bearing reading'],
    ]),
  ],
  [
    'a sum of nought',
    chain('Gap', [
      [1, 'Finger reading'],
      [-1, 'Bearing reading'],
    ]),
  ],
  [
    'vastly different sizes',
    chain('Length', [
      [30, 'Flange to flange of the old gearbox'],
      [-0.004, 'Paint'],
      [0.0005, 'Film of oil, thinner than anything one would measure with a rule', '0.0005 in'],
      [-12, 'Bell housing'],
    ]),
  ],
  ['one term', chain('One', [[2, 'Only one']])],
  ['no terms', chain('None', [])],
  [
    'one value not known',
    chain(
      'Gap',
      [
        [3.2, 'Finger reading'],
        [Number.NaN, 'Bearing', ''],
        [0.25, 'Straightedge'],
      ],
      '',
    ),
  ],
  [
    'nothing known',
    chain(
      'Gap',
      [
        [Number.NaN, 'Finger', ''],
        [Number.NaN, 'Bearing', ''],
      ],
      '',
    ),
  ],
  [
    'only noughts',
    chain('Gap', [
      [0, 'Nothing'],
      [-0, 'Nothing again'],
    ]),
  ],
  [
    'twelve terms',
    chain(
      'Twelve',
      Array.from({ length: 12 }, (_, i) => [
        (i % 3 === 2 ? -1 : 1) * (0.2 + ((i * 7) % 5) / 3),
        `Shim or spacer number ${i + 1}`,
      ]),
    ),
  ],
  [
    'a word that never ends',
    chain('Long', [
      [1, 'Getriebeglockenanschraubflächenausrichtungsmessvorrichtungsdicke'],
      [-0.9, ''],
    ]),
  ],
];
