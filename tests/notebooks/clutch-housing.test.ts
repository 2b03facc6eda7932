import { describe, expect, test } from 'vitest';
import { outcomeOf } from '../../src/sheet/solve.ts';
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
const SHEET = '60-clutch-housing';
const housing = (entries: Entries = {}) => work(BOOK, SHEET, entries);
const TRUE_DIAL = { bar_sag: '0', bearing_lift: '0' };
const FOUR = { clock_positions: '[12, 3, 6, 9]', ...TRUE_DIAL };
const EIGHT = [12, 1.5, 3, 4.5, 6, 7.5, 9, 10.5];

/** Readings in thou of a bore off centre toward one clock hour and oval along another. */
function read(hours: readonly number[], offset: number, toward: number, oval = 0, along = 0) {
  const angle = (hour: number) => (hour * Math.PI) / 6;
  const readings = hours.map(
    (hour) => offset * Math.cos(angle(hour - toward)) + oval * Math.cos(2 * angle(hour - along)),
  );
  return {
    clock_positions: `[${hours.join(', ')}]`,
    bore_readings: `[${readings.join(', ')}] thou`,
  };
}

describe('the worked example', () => {
  const worked = housing();

  test('has its sag and lift put right by hand', () => {
    const hours = [12, 1.5, 3, 6, 7.5, 9, 10.5];
    const raw = [0, 10.5, 19, 17, 9.5, 0.5, -4.5];
    const cosines = hours.map((hour) => Math.cos((hour * Math.PI) / 6));
    const byHand = raw.map(
      (value, i) => value + (1 + cosines[i]!) / 2 - (1.5 * (1 - cosines[i]!)) / 2,
    );
    numbersIn(worked, 'true_readings', 'thou').forEach((value, i) => {
      expect(value).toBeCloseTo(byHand[i]!, 10);
    });
  });

  test('explains its readings to a tenth of a thou', () => {
    for (const left of numbersIn(worked, 'left_unexplained', 'thou'))
      expect(Math.abs(left)).toBeLessThan(0.15);
  });

  test('counts 12 o’clock as no angle at all', () => {
    for (const name of ['angles', 'face_angles']) expect(numbersIn(worked, name, 'rad')[0]).toBe(0);
  });

  test('has its offset, oval and remainder add up to the readings', () => {
    const [offset, toward] = [
      numberIn(worked, 'offset', 'thou'),
      numberIn(worked, 'direction', 'rad'),
    ];
    const [oval, along] = [
      numberIn(worked, 'oval', 'thou'),
      numberIn(worked, 'oval_direction', 'rad'),
    ];
    const left = numbersIn(worked, 'left_unexplained', 'thou');
    const means = numbersIn(worked, 'angles', 'rad').map(
      (angle, i) =>
        numbersIn(worked, 'true_readings', 'thou')[i]! -
        offset * Math.cos(angle - toward) -
        oval * Math.cos(2 * (angle - along)) -
        left[i]!,
    );
    for (const mean of means) expect(mean).toBeCloseTo(means[0]!, 9);
  });

  test('takes the 14 thou dowels and turns them toward the high side', () => {
    expect(numberIn(worked, 'dowel', 'thou')).toBeCloseTo(14, 9);
    expect(numberIn(worked, 'dowel_clock', '')).toBeCloseTo(4.27, 1);
    const left = Math.abs(numberIn(worked, 'offset', 'thou') - 14);
    expect(numberIn(worked, 'best_total', 'thou')).toBeCloseTo(2 * left, 9);
  });

  test('fails as found, on purpose, and passes in everything else', () => {
    const found = Object.entries(verdicts(worked));
    expect(found.filter(([, verdict]) => verdict !== 'pass')).toEqual([['total_as_found', 'fail']]);
  });

  test('came out of the second round as the dowels had promised', () => {
    expect(numberIn(worked, 'total_as_left', 'thou')).toBeLessThan(5);
    expect(Math.abs(numberIn(worked, 'forecast_missed_by', 'thou'))).toBeLessThan(0.5);
  });
});

describe('total reading against offset', () => {
  test('indicator readings 0, +3, −2, +3 have a total of 5 and an offset of 1.0', () => {
    const worked = housing({ ...FOUR, bore_readings: '[0, 3, -2, 3]' });
    expect(numberIn(worked, 'total_reading', 'thou')).toBeCloseTo(5, 9);
    expect(numberIn(worked, 'offset', 'thou')).toBeCloseTo(1, 9);
    expect(numberIn(worked, 'dowel', 'thou')).toBe(0);
    expect(numberIn(worked, 'dowel_by_half_total', 'thou')).toBe(0);
  });

  test('the same four with a pencil: half of each opposite pair, square to one another', () => {
    const worked = housing();
    expect(numberIn(worked, 'four_total', 'thou')).toBeCloseTo(5, 9);
    expect(numberIn(worked, 'four_half_total', 'thou')).toBeCloseTo(2.5, 9);
    expect(numberIn(worked, 'four_up', 'thou')).toBeCloseTo(1, 9);
    expect(numberIn(worked, 'four_right', 'thou')).toBeCloseTo(0, 9);
    expect(numberIn(worked, 'four_offset', 'thou')).toBeCloseTo(1, 9);
    expect(numberIn(worked, 'four_oval', 'thou')).toBeCloseTo(-2, 9);
  });

  test.each([
    [7, -4, -9, 12],
    [0, 0, 10, 0],
    [-3, 8, 5, -6],
  ])('the pencil comes to the same as least squares for %d, %d, %d, %d', (...readings) => {
    const [at_12, at_3, at_6, at_9] = readings.map(String) as [string, string, string, string];
    const worked = housing({
      ...FOUR,
      bore_readings: `[${readings.join(', ')}]`,
      ...{ at_12, at_3, at_6, at_9 },
    });
    const fitted = numberIn(worked, 'offset', 'thou');
    expect(numberIn(worked, 'four_offset', 'thou')).toBeCloseTo(fitted, 9);
    expect(Math.abs(numberIn(worked, 'four_oval', 'thou'))).toBeCloseTo(
      numberIn(worked, 'oval', 'thou'),
      9,
    );
  });

  test('the dowel answers half of the total of a round bore', () => {
    const worked = housing({ ...TRUE_DIAL, ...read(EIGHT, 7, 3) });
    expect(numberIn(worked, 'total_reading', 'thou')).toBeCloseTo(14, 9);
    expect(numberIn(worked, 'dowel', 'thou')).toBeCloseTo(7, 9);
    expect(numberIn(worked, 'best_total', 'thou')).toBeCloseTo(0, 9);
  });

  test('half of the total of an oval bore picks another dowel than the fit', () => {
    const worked = housing({ ...TRUE_DIAL, ...read(EIGHT, 9, 0.75, 3.4, 2.25) });
    expect(numberIn(worked, 'offset', 'thou')).toBeCloseTo(9, 9);
    expect(numberIn(worked, 'dowel', 'thou')).toBeCloseTo(7, 9);
    expect(numberIn(worked, 'dowel_by_half_total', 'thou')).toBeCloseTo(14, 9);
  });
});

describe('a blocked position', () => {
  const seven = EIGHT.filter((hour) => hour !== 4.5);

  test.each([0, 3, 7.5])('leaves offset and oval as they are, high side at %d', (toward) => {
    const worked = housing({ ...TRUE_DIAL, ...read(seven, 8, toward, 2, 1) });
    expect(numberIn(worked, 'offset', 'thou')).toBeCloseTo(8, 9);
    expect(numberIn(worked, 'oval', 'thou')).toBeCloseTo(2, 9);
    expect(numberIn(worked, 'direction', 'deg')).toBeCloseTo(toward * 30, 7);
  });

  test('makes the sums for even spacing choose the wrong dowel', () => {
    const worked = housing();
    expect(numberIn(worked, 'dowel_by_sums', 'thou')).toBeCloseTo(7, 9);
    expect(numberIn(worked, 'dowel', 'thou')).toBeCloseTo(14, 9);
  });

  test('left in one of the two lists is told', () => {
    const worked = housing({ bore_readings: '[0, 10.5, 19, 12, 17, 9.5, 0.5, -4.5]' });
    expect(stateOf(worked, 'true_readings').state).not.toBe('value');
    expect(verdicts(worked).total_as_found).toBe('unknown');
  });
});

test('with all eight read the sums agree with the fit', () => {
  const worked = housing({ ...TRUE_DIAL, ...read(EIGHT, 6, 2, 1, 1) });
  expect(numberIn(worked, 'offset_by_sums', 'thou')).toBeCloseTo(6, 9);
});

describe('what lies to the dial', () => {
  test('sag shown under a bar comes in with its sign turned round', () => {
    const worked = housing({ ...FOUR, bore_readings: '[0, 1, 2, 1]', bar_sag: '-2' });
    expect(numberIn(worked, 'offset', 'thou')).toBeCloseTo(0, 9);
  });

  test('lift is added at the top', () => {
    const worked = housing({ ...FOUR, bore_readings: '[0, 0, 0, 0]', bearing_lift: '4' });
    expect(numberIn(worked, 'offset', 'thou')).toBeCloseTo(2, 9);
    expect(numberIn(worked, 'direction', 'deg')).toBeCloseTo(0, 7);
  });

  test('where the dial was zeroed drops out', () => {
    const at = (zero: number) =>
      numberIn(
        housing({
          ...FOUR,
          bore_readings: `[${[0, 4, 6, 1].map((value) => value + zero)}]`.replaceAll(',', ', '),
        }),
        'offset',
        'thou',
      );
    expect(at(20)).toBeCloseTo(at(0), 9);
  });

  test('a dial that does not come back to 12 o’clock fails', () => {
    expect(verdicts(housing({ rezero: '1' })).rezero).toBe('fail');
    expect(verdicts(housing({ rezero: '-0.5' })).rezero).toBe('pass');
  });
});

describe('the dowels', () => {
  test('turned the wrong way add to the offset', () => {
    const worked = housing({ dowel_at: '10.25' });
    expect(numberIn(worked, 'offset_left', 'thou')).toBeGreaterThan(25);
    expect(verdicts(worked).total_after_dowels).toBe('fail');
  });

  test('set exactly and alike leave what the sheet promises', () => {
    const clock = numberIn(housing(), 'dowel_clock', '');
    const worked = housing({ dowel_at: `${clock}`, second_ahead: '0' });
    const best = numberIn(worked, 'best_total', 'thou');
    expect(numberIn(worked, 'total_after_dowels', 'thou')).toBeCloseTo(best, 9);
    expect(numberIn(worked, 'housing_turned', 'deg')).toBeCloseTo(0, 12);
  });

  test('are plain ones where an offset dowel would leave more', () => {
    const worked = housing({ ...TRUE_DIAL, ...read(EIGHT, 2, 9) });
    expect(numberIn(worked, 'dowel', 'thou')).toBe(0);
    expect(verdicts(worked).total_as_found).toBe('pass');
  });
});

describe('the face', () => {
  test('that leans back at the bottom is shimmed at the top', () => {
    const worked = housing({
      face_positions: '[12, 3, 6, 9]',
      face_readings: '[0, 3, 6, 3]',
      face_radius: '3',
      flange_span: '12',
    });
    expect(numberIn(worked, 'face_tilt_reading', 'thou')).toBeCloseTo(3, 9);
    expect(numberIn(worked, 'face_high', 'deg')).toBeCloseTo(180, 7);
    expect(Math.cos(numberIn(worked, 'shim_at', 'rad'))).toBeCloseTo(1, 9);
    expect(numberIn(worked, 'tilt', 'deg')).toBeCloseTo((Math.atan(0.003 / 3) * 180) / Math.PI, 9);
    expect(numberIn(worked, 'shim_edge', 'thou')).toBeCloseTo(12, 9);
    expect(verdicts(worked).face_total).toBe('fail');
  });

  test('that is square wants no shim', () => {
    const worked = housing({ face_readings: '[1, 1, 1, 1, 1, 1, 1, 1]' });
    expect(numberIn(worked, 'shim_edge', 'thou')).toBeCloseTo(0, 9);
  });
});

describe('other readings', () => {
  test('a metric dial in a list of millimetres', () => {
    const worked = housing({ ...FOUR, bore_readings: '[0, 0.10, 0.20, 0.10] mm' });
    expect(numberIn(worked, 'offset', 'mm')).toBeCloseTo(0.1, 9);
    expect(numberIn(worked, 'direction', 'deg')).toBeCloseTo(180, 7);
  });

  test('three positions show an offset and no oval', () => {
    const worked = housing({ ...TRUE_DIAL, ...read([12, 4, 8], 5, 4) });
    expect(numberIn(worked, 'offset', 'thou')).toBeCloseTo(5, 9);
    expect(stateOf(worked, 'oval')).toMatchObject({ state: 'failed' });
    expect(verdicts(worked)).toMatchObject({
      oval_total: 'unknown',
      offset_against_doubt: 'unknown',
    });
  });

  test('a true bore whose scatter is all there is has no direction', () => {
    const worked = housing({
      clock_positions: `[${EIGHT.join(', ')}]`,
      bore_readings: '[0, 0.5, 0, 0, 0.5, 0.5, 0, 0.5]',
      ...TRUE_DIAL,
    });
    expect(verdicts(worked)).toMatchObject({
      offset_against_doubt: 'fail',
      total_as_found: 'pass',
    });
  });

  test('two positions are refused in words', () => {
    const worked = housing({ ...TRUE_DIAL, ...read([12, 6], 5, 12) });
    expect(stateOf(worked, 'offset')).toMatchObject({
      problem: { message: expect.stringContaining('too few') },
    });
  });
});

describe('windows', () => {
  const true_ = { readings_after: '[-1, -0.63, 0.25, 1.5, 1.13, 0.25, -0.63]' };
  const wild = { readings_after: '[0, 10.5, 19, 17, 9.5, 0.5, -4.5]' };
  const lost = { bore_readings: '[0, 0.5, 0, 0, 0.5, 0.5, 0, 0.5]', ...TRUE_DIAL };
  const askew = '[0, 0, 0.5, 2, 6, 3.5, 2, 0.5]';
  testWindows(BOOK, SHEET, [
    ['rezero', 'below', { rezero: '-1' }, 'base or the arm moved'],
    ['rezero', 'above', { rezero: '1' }, 'base or the arm moved'],
    [
      'offset_against_doubt',
      'below',
      { clock_positions: `[${EIGHT.join(', ')}]`, ...lost },
      'lost in the readings',
    ],
    ['total_as_found', 'above', {}, 'bent in every turn'],
    ['oval_total', 'above', { ...FOUR, bore_readings: '[8, 0, 8, 0]' }, 'No dowel mends'],
    ['total_after_dowels', 'above', { dowel_at: '10.25' }, 'turned the wrong way'],
    ['rezero_after', 'below', { rezero_after: '-1' }, 'base or the arm moved'],
    ['rezero_after', 'above', { rezero_after: '1' }, 'base or the arm moved'],
    ['total_as_left', 'above', wild, 'Not there yet'],
    ['forecast_missed_by', 'below', true_, 'Better than forecast'],
    ['forecast_missed_by', 'above', wild, 'did not go where'],
    ['face_rezero', 'below', { face_rezero: '-1' }, 'end float'],
    ['face_rezero', 'above', { face_rezero: '1' }, 'end float'],
    ['face_total', 'above', { face_readings: askew }, 'stand askew'],
  ]);
});

describe('practice', () => {
  testPractice(BOOK, SHEET, [
    ['Offset, from four readings', 'That is the total reading'],
    ['Offset, from four readings', 'Half of the total is the offset of a round bore only'],
    ['Offset, from four readings', 'Not halved'],
    ['Offset, from four readings', 'The two parts were added'],
    ['Offset, from four readings', 'One part only'],
    ['What a dowel leaves', 'That is the offset left'],
    ['What a dowel leaves', 'Turned the wrong way'],
    ['What a dowel leaves', 'The dowel was chosen by the total reading'],
    ['What a dowel leaves', 'The dowel was taken off the total reading'],
    ['What a dowel leaves', 'The dowel was chosen by half of the total'],
    ['The shim at its thick edge', 'From the total reading'],
    ['The shim at its thick edge', 'That is the lean at the plunger'],
    ['The shim at its thick edge', 'The proportion stands on its head'],
    ['The shim at its thick edge', 'Half of it'],
  ]);
});

function stateOf(worked: Worked, name: string) {
  return outcomeOf(BOOK, worked.frame, cellIndex(BOOK, SHEET, name));
}
