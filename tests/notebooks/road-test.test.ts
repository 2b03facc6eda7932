import { describe, expect, test } from 'vitest';
import { plainBlanks } from '../../src/cli/plain-blanks.ts';
import { recordChecks } from '../../src/cli/record-checks.ts';
import { outcomeOf } from '../../src/sheet/solve.ts';
import { sweepChart } from '../../src/sheet/sweep.ts';
import {
  cellIndex,
  type Entries,
  numberIn,
  numbersIn,
  openNotebooks,
  type Worked,
  work,
} from '../support/notebooks.ts';
import { testPractice } from '../support/practice.ts';
import { verdicts } from '../support/verdicts.ts';
import { testWindows } from '../support/windows.ts';

const BOOK = openNotebooks();
const SHEET = '130-road-test';
const drive = (entries: Entries = {}) => work(BOOK, SHEET, entries);

const MILE = 63360;
const ROLLED = 3.05 * (15 + (2 * 205 * 0.6) / 25.4);
const WHEEL_TURNS = MILE / ROLLED;
const RATIOS = [3.15, 1.95, 1.35, 1, 0.74];
const COUNTER = 2520 / 2500;

describe('the worked example', () => {
  const worked = drive();

  test('finds the overall ratio of each gear from engine and satellite', () => {
    const speeds = [17.5, 28.2, 40.8, 55.0, 71.3];
    const engines = [2520, 2520, 2520, 2520, 2420];
    const overall = speeds.map((speed, i) => (engines[i]! / COUNTER / speed) * (60 / WHEEL_TURNS));
    expectAll(numbersIn(worked, 'overall_by_gear', ''), overall);
    const off = overall.map((ratio, i) => ratio / (RATIOS[i]! * 3.25) - 1);
    const common = off.reduce((sum, one) => sum + one) / 5;
    expect(numberIn(worked, 'common_off', '')).toBeCloseTo(common, 12);
    expectAll(
      numbersIn(worked, 'own_off', ''),
      off.map((one) => one - common),
    );
  });

  test('lays one line through six steady speeds, and the roll-out follows', () => {
    const speeds = [40.1, 50.2, 55.1, 59.8, 65.1, 70.3];
    const engines = [1360, 1700, 1870, 2030, 2200, 2380].map((speed) => speed / COUNTER);
    const squares = speeds.reduce((sum, v) => sum + v * v, 0);
    const turns = (60 * speeds.reduce((sum, v, i) => sum + v * engines[i]!, 0)) / squares;
    expect(numberIn(worked, 'turns_found', 'rev/mi')).toBeCloseTo(turns, 8);
    expect(numberIn(worked, 'gear_found', '')).toBeCloseTo(turns / WHEEL_TURNS / 3.25, 12);
    expect(numberIn(worked, 'rollout_found', 'in/rev')).toBeCloseTo(
      (0.74 * 3.25 * MILE) / turns,
      9,
    );
  });

  test('comes to the same by a timed mile', () => {
    const turns = ((2380 / COUNTER) * 51.3) / 60;
    expect(numberIn(worked, 'turns_by_mile', 'rev/mi')).toBeCloseTo(turns, 9);
    expect(numberIn(worked, 'mile_speed', 'mph')).toBeCloseTo(3600 / 51.3, 10);
  });

  test('splits what runs ahead under load between tyre and clutch', () => {
    const seen = 1 - 2034 / 2052;
    expect(numberIn(worked, 'slip_seen', '')).toBeCloseTo(seen, 12);
    const creep =
      (numberIn(worked, 'full_pull', 'lbf') - numberIn(worked, 'light_pull', 'lbf')) /
      (25 * 3200 * 0.47);
    expect(numberIn(worked, 'creep', '')).toBeCloseTo(creep, 12);
    expect(numberIn(worked, 'clutch_slip', '')).toBeCloseTo(seen - creep, 12);
  });

  test('reckons the take-up from lever ratio, cushion and pedal', () => {
    const areas = (50.8 ** 2 - 34.93 ** 2) / (0.875 * 25.4) ** 2;
    const master = (Math.PI / 4) * (0.875 * 25.4) ** 2;
    const loss = 0.05 * 25.4 + 200 / master;
    const pad = (3.5 * 0.03 * 25.4 * areas + loss) * 5.75 + 6.35;
    expect(numberIn(worked, 'bite_reckoned', 'mm')).toBeCloseTo(pad, 9);
  });

  test('gives each turning part its rate', () => {
    const wheel = (58 * WHEEL_TURNS) / 3600;
    const shaft = 3.25 * wheel;
    const rates = [wheel, 2 * wheel, shaft, 2 * shaft, shaft, shaft / 2, 3 * shaft];
    expectAll(numbersIn(worked, 'shake_rates', 'rev/s'), rates);
  });

  test('tells what the odometer will show when it is due', () => {
    const odometer = (3.25 * WHEEL_TURNS * 7) / 19 / 1000;
    expect(numberIn(worked, 'recheck_at', 'mi')).toBeCloseTo(48210 + 500 * odometer, 7);
    expect(numberIn(worked, 'bedded_at', 'mi')).toBeCloseTo(48210 + 300 * odometer, 7);
  });

  test('passes every check of its own', () => {
    expect(new Set(Object.values(verdicts(worked)))).toEqual(new Set(['pass']));
  });
});

describe('three other cars', () => {
  test('a six-speed on a short axle, its figures typed as sums', () => {
    const gears = [2.8, 1.85, 1.36, 1.06, 0.84, 0.66];
    const speeds = gears.map((gear) => (2400 * 60) / (gear * 3.73 * WHEEL_TURNS));
    const worked = drive({
      '20-gearing/gear_ratios': 'Six-speed',
      '20-gearing/axle_ratio': '3.73',
      counter_reads: '2500',
      mean_engine: '[(1400 + 1900 + 2400 + 2900 + 3400) / 5, 2400, 2400, 2400, 2400, 2400]',
      mean_speed: `[${speeds.join(', ')}]`,
      steady_gear: '6',
    });
    for (const off of numbersIn(worked, 'off_by_gear', '')) expect(off).toBeCloseTo(0, 9);
    expect(numberIn(worked, 'steady_ratio', '')).toBe(0.66);
  });

  test('in direct drive the roll-out needs no word from the gearbox maker', () => {
    const worked = drive({
      steady_gear: '4',
      steady_engine: '[1800, 2700] rpm',
      steady_speed: '[40, 60] mph',
      counter_reads: '2500',
    });
    expect(numberIn(worked, 'turns_found', 'rev/mi')).toBeCloseTo(2700, 9);
    expect(numberIn(worked, 'rollout_found', 'in/rev')).toBeCloseTo((3.25 * MILE) / 2700, 9);
    expect(numberIn(worked, 'top_over_steady', '')).toBeCloseTo(0.74, 12);
  });

  test('a four in kilometres an hour shakes by firing twice a turn', () => {
    const worked = drive({ cylinders: '4', shake_speed: '90 km/h', shake_gear: '3' });
    const wheel = (90 / 1.609344) * (WHEEL_TURNS / 3600);
    const engine = wheel * 3.25 * 1.35;
    expect(numbersIn(worked, 'shake_rates', 'rev/s').at(-1)).toBeCloseTo(2 * engine, 9);
  });
});

describe('the mistakes of the trade', () => {
  test('what is off in all gears alike is left out of each gear', () => {
    const short = drive({ '20-gearing/measured_rollout': '1960 mm' });
    expect(numberIn(short, 'common_off', '%')).toBeGreaterThan(1.5);
    const own = numbersIn(short, 'own_off', '');
    expectAll(own, numbersIn(drive(), 'own_off', ''), 2);
    expect(verdicts(short)).toMatchObject({ own_off: 'pass' });
  });

  test('a rev counter that is off would have put every gear off', () => {
    const believed = drive({ counter_reads: '2500' });
    const off = numberIn(believed, 'common_off', '') - numberIn(drive(), 'common_off', '');
    expect(off).toBeCloseTo(0.008, 4);
  });

  test('a reading taken in the next gear shows in that gear alone', () => {
    const worked = drive({ mean_speed: '[17.5, 28.2, 55.0, 55.0, 71.3]' });
    expect(verdicts(worked).own_off).toBe('fail');
    const own = numbersIn(worked, 'own_off', '');
    expect(own.indexOf(Math.min(...own))).toBe(2);
  });

  test('the speedometer taken for the road speed makes every gear seem taller', () => {
    const worked = drive({ mean_speed: '[18.4, 29.6, 42.8, 57.8, 74.9]' });
    expect(numberIn(worked, 'common_off', '')).toBeLessThan(-0.04);
    expect(verdicts(worked).common_off).toBe('fail');
  });

  test('the tyre that creeps would have been taken for a slipping clutch', () => {
    expect(numberIn(drive(), 'slip_seen', '%')).toBeGreaterThan(0.5);
    expect(verdicts(drive()).clutch_slip).toBe('pass');
    const shaft = drive({ road_side: 'sender on the output shaft' });
    expect(numberIn(shaft, 'creep', '')).toBe(0);
    expect(verdicts(shaft).clutch_slip).toBe('fail');
  });

  test('slip drops tyre, axle and rev counter out, whatever they are', () => {
    const other = drive({
      '20-gearing/rim_diameter': '14',
      counter_reads: '2450',
      light_speed: '30',
      light_engine: '1017',
    });
    expect(numberIn(other, 'slip_seen', '')).toBeCloseTo(1 - 2034 / 2052, 12);
  });

  test('so hard a pull that creep no longer grows evenly is told', () => {
    const cell = BOOK.cells[cellIndex(BOOK, SHEET, 'creep')]!;
    expect(cell).toMatchObject({
      statement: { valid: { sentence: expect.stringContaining('higher gear') } },
    });
    const first = drive({ steady_gear: '1', full_speed: '30' });
    const pull = numberIn(first, 'full_pull', 'lbf');
    expect(pull).toBeGreaterThan(0.4 * 3200 * 0.47);
  });

  test('in direct drive engine and shaft cannot be told apart, in another gear they can', () => {
    expect(wordsIn(drive(), 'suspects')).toEqual(['driveshaft', 'engine']);
    expect(wordsIn(drive(), 'still_suspect')).toEqual(['driveshaft']);
  });

  test('a shake that goes with the engine is found as the engine', () => {
    const worked = drive({ second_rate: '32.6' });
    expect(wordsIn(worked, 'still_suspect')).toEqual(['engine']);
    expect(numberIn(worked, 'rate_moved', '')).toBeLessThan(-0.2);
  });

  test('joints shake twice in a turn of the shaft', () => {
    expect(wordsIn(drive({ shake_gear: '5', felt_rate: '88' }), 'suspects')).toEqual(['joints']);
  });

  test('a rate that nothing turns at leaves no suspect', () => {
    expect(wordsIn(drive({ felt_rate: '35' }), 'suspects')).toEqual([]);
  });

  test('in overdrive the shaft is faster than the engine', () => {
    const worked = drive({ shake_gear: '5' });
    const [shaft, engine] = ['shaft_rate', 'engine_rate'].map((name) =>
      numberIn(worked, name, 'rpm'),
    );
    expect(shaft! / engine!).toBeCloseTo(1 / 0.74, 12);
  });

  test('readings for another count of gears are refused with both counts', () => {
    const worked = drive({ mean_speed: '[20, 30, 40]' });
    const turns = outcomeOf(BOOK, worked.frame, cellIndex(BOOK, SHEET, 'turns_by_gear'));
    expect(turns.state).toBe('failed');
    expect(numberIn(worked, 'turns_found', 'rev/mi')).toBeGreaterThan(2000);
  });

  test('a gear that the gearbox has not says so', () => {
    const worked = drive({ steady_gear: '6' });
    const ratio = outcomeOf(BOOK, worked.frame, cellIndex(BOOK, SHEET, 'steady_ratio'));
    expect(ratio.state).toBe('failed');
  });
});

test('the chart of rates has a straight line a source, and the felt rate on it', () => {
  const { statement } = BOOK.charts.find(
    ({ sheet, statement: { title } }) => sheet === SHEET && title === 'Rates against road speed',
  )!;
  const data = sweepChart(BOOK, drive().frame, statement, SHEET, 'inch-pound');
  if ('code' in data) throw new Error(data.message);
  expect(data.series.map(({ label }) => label)).toEqual(wordsIn(drive(), 'source_name'));
  for (const { points } of data.series) {
    const [last] = points.slice(-1);
    for (const [x, y] of points) expect(y).toBeCloseTo((last![1] * x) / last![0], 9);
  }
  expect(data.marks.map(({ value }) => value)).toEqual([58, expect.closeTo(44, 9)]);
});

describe('each verdict is a sentence', () => {
  const told = (entries: Entries, name: string) => {
    const { book, frame } = drive(entries);
    return plainBlanks(recordChecks(book, frame, SHEET).find((check) => check.name === name)!.text);
  };

  test('inside the window with what is left', () => {
    expect(told({}, 'smooth_to')).toBe('Enough. 0 mph to spare above 70 mph.');
  });

  test('outside it with by how much and what to do', () => {
    expect(told({ smooth_to: '55' }, 'smooth_to')).toBe(
      '55 mph is 15 mph less than the least allowed, 70 mph. Not yet. Name the source above, mend it, and drive again before the car is given back.',
    );
  });

  test('of a list with the gear that is furthest out', () => {
    expect(told({ mean_speed: '[17.5, 28.2, 40.8, 55.0, 75.0]' }, 'own_off')).toMatch(/^5th: /);
  });
});

testWindows(BOOK, SHEET, [
  ['counter_error', 'below', { counter_reads: '2400' }, 'reads slow'],
  ['counter_error', 'above', { counter_reads: '2600' }, 'reads fast'],
  ['common_off', 'below', { '20-gearing/axle_ratio': '3.55' }, 'taller'],
  ['common_off', 'above', { '20-gearing/axle_ratio': '3.07' }, 'shorter'],
  ['own_off', 'below', { mean_speed: '[17.5, 28.2, 40.8, 55.0, 73.3]' }, 'taller'],
  ['own_off', 'above', { mean_speed: '[17.5, 28.2, 40.8, 55.0, 69.3]' }, 'shorter'],
  ['worst_off', 'above', { steady_engine: '[1360, 1740, 1870, 2030, 2200, 2380] rpm' }, 'one line'],
  ['rollout_off', 'below', { '20-gearing/axle_ratio': '3.08' }, 'Shorter than any tyre'],
  ['rollout_off', 'above', { '20-gearing/axle_ratio': '3.42' }, 'Longer than any tyre'],
  ['mile_differs', 'below', { mile_time: '50.5' }, 'Fewer turns'],
  ['mile_differs', 'above', { mile_time: '52.0' }, 'More turns'],
  ['cruise_found', 'above', { '20-gearing/cruise_speed': '80' }, 'Busier'],
  ['needle_found', 'below', { satellite_at: '[30.2, 49.4, 69.2] mph' }, 'reads slow'],
  ['needle_found', 'above', { satellite_at: '[28.6, 49.4, 69.2] mph' }, 'too fast'],
  ['needle_off', 'below', { satellite_at: '[31, 51, 71] mph' }, 'Slower than the gears'],
  ['needle_off', 'above', { satellite_at: '[28.6, 48, 67] mph' }, 'Faster than the gears'],
  ['clutch_slip', 'below', { full_engine: '2030' }, 'swapped'],
  ['clutch_slip', 'above', { full_engine: '2120' }, 'It slips'],
  ['bite_off', 'below', { bite_cold: '1.5' }, 'early'],
  ['bite_off', 'above', { bite_cold: '3.2' }, 'late'],
  ['bite_moved', 'below', { bite_hot: '1.9' }, 'as it warms'],
  ['bite_moved', 'above', { bite_hot: '3.0' }, 'sinks'],
  ['bite_to_stop', 'below', { bite_hot: '5.9' }, 'grate'],
  ['off_half_critical', 'below', { shake_speed: '100' }, 'balancing does nothing'],
  ['smooth_to', 'below', { smooth_to: '65' }, 'Not yet'],
  ['hill_share', 'below', { hill_held: '5' }, 'Weaker'],
  ['hill_share', 'above', { hill_held: '9' }, 'Stronger'],
  ['bolt_turned', 'above', { bolt_turned: '30' }, 'had not clamped'],
  ['fluid_sunk', 'above', { fluid_sunk: '2' }, 'Do not drive on'],
  ['oil_spots', 'above', { oil_spots: '1' }, 'highest'],
  ['box_level', 'above', { box_level: '8' }, 'Top it up'],
]);

testPractice(BOOK, SHEET, [
  ['Which gear was that?', 'Divide by the axle'],
  ['Which gear was that?', 'by π'],
  ['Which gear was that?', 'other way round'],
  ['Which gear was that?', 'by it as well'],
  ['Does it slip?', 'road speeds were not the same'],
  ['Does it slip?', 'below the line'],
  ['Does it slip?', 'slip is plus'],
  ['Does it slip?', 'over road speed'],
  ['What shakes?', 'twice in each turn'],
  ['What shakes?', 'That is the wheel'],
  ['What shakes?', 'That is the engine'],
  ['What shakes?', 'by π'],
]);

function wordsIn({ book, frame }: Worked, name: string): readonly string[] {
  const outcome = outcomeOf(book, frame, cellIndex(book, SHEET, name));
  if (outcome.state !== 'value') throw new Error(`${name} has no value`);
  return outcome.value as unknown as readonly string[];
}

function expectAll(found: readonly number[], wanted: readonly number[], digits = 9): void {
  expect(found).toHaveLength(wanted.length);
  found.forEach((number, i) => {
    expect(number).toBeCloseTo(wanted[i]!, digits);
  });
}
