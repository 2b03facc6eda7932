import { describe, expect, test } from 'vitest';
import { outcomeOf } from '../../src/sheet/solve.ts';
import {
  cellIndex,
  type Entries,
  enter,
  numberIn,
  numbersIn,
  openNotebooks,
  work,
} from '../support/notebooks.ts';
import { verdicts } from '../support/verdicts.ts';

const BOOK = openNotebooks();
const SHEET = '70-release-bearing';
const bearing = (entries: Entries = {}) => work(BOOK, SHEET, entries);

describe('the worked example', () => {
  const worked = bearing();

  test('comes out as by hand', () => {
    expect(numberIn(worked, 'gap', 'in')).toBeCloseTo(0.165, 12);
    expect(numberIn(worked, 'out_by', 'in')).toBeCloseTo(0.015, 12);
    expect(numberIn(worked, 'collar_turns', 'rev')).toBeCloseTo((0.015 * 25.4) / 1.5, 12);
    expect(numberIn(worked, 'finger_travel', 'in')).toBeCloseTo(0.1225, 12);
    expect(numberIn(worked, 'gap_when_worn', 'in')).toBeCloseTo(0.0425, 12);
    expect(numberIn(worked, 'wear_allowed', 'in')).toBeCloseTo(0.165 / 3.5, 12);
  });

  test('finds the shims for the gap in the drawer', () => {
    const shims = numbersIn(worked, 'shims', 'thou').map(Math.round);
    expect(shims.toSorted((a, b) => a - b)).toEqual([5, 10]);
    expect(numberIn(worked, 'gap_after_shims', 'in')).toBeCloseTo(0.15, 12);
  });

  test('passes every check of its own', () => {
    expect(verdicts(worked)).toMatchObject({ gap: 'pass', gap_when_worn: 'pass' });
    expect(new Set(Object.values(verdicts(worked)))).toEqual(new Set(['pass']));
  });
});

describe('the straightedge', () => {
  test('drops out, whatever its thickness', () => {
    const [thin, thick] = [bearing({ straightedge: '1/8' }), bearing({ straightedge: '20 mm' })];
    expect(numberIn(thin, 'gap', 'in')).toBeCloseTo(0.165, 12);
    expect(numberIn(thick, 'gap', 'in')).toBeCloseTo(0.165, 12);
  });

  test('on one side only puts its whole thickness into the gap', () => {
    const worked = bearing({ straightedge: '0.375' });
    expect(numberIn(worked, 'gap_one_side', 'in')).toBeCloseTo(0.165 + 0.375, 12);
    expect(numberIn(worked, 'one_side_error', 'in')).toBeCloseTo(0.375, 12);
  });
});

describe('the collar', () => {
  test('is wound toward the clutch for a gap that is too wide', () => {
    expect(numberIn(bearing({ finger_reading: '3.230' }), 'collar_turns', 'rev')).toBeGreaterThan(
      0,
    );
  });

  test('is wound back for a gap that is too small', () => {
    const worked = bearing({ finger_reading: '3.167' });
    expect(numberIn(worked, 'gap', 'in')).toBeCloseTo(0.12, 12);
    expect(numberIn(worked, 'out_by', 'in')).toBeCloseTo(-0.03, 12);
    expect(numberIn(worked, 'collar_turns', 'rev')).toBeCloseTo((-0.03 * 25.4) / 1.5, 12);
    expect(verdicts(worked).gap).toBe('fail');
  });

  test('has words for either way and for none', () => {
    const cell = BOOK.find(SHEET, 'collar_turns');
    expect(cell).toMatchObject({
      role: 'work',
      statement: {
        signs: {
          positive: expect.stringContaining('toward the clutch: the gap closes'),
          negative: expect.stringContaining('toward the gearbox: the gap opens'),
          zero: expect.stringContaining('Leave the collar'),
        },
      },
    });
  });

  test('of twice the pitch is turned half as far', () => {
    const coarse = numberIn(bearing({ collar_pitch: '3' }), 'collar_turns', 'rev');
    expect(coarse).toBeCloseTo(numberIn(bearing(), 'collar_turns', 'rev') / 2, 12);
  });
});

describe('shims', () => {
  test('are each used at most once', () => {
    const worked = bearing({ finger_reading: '3.227', shim_sizes: '[0.010]' });
    expect(numbersIn(worked, 'shims', 'thou').map(Math.round)).toEqual([10]);
  });

  test('of the same size are used as often as they lie in the drawer', () => {
    const worked = bearing({ finger_reading: '3.217', shim_sizes: '[0.010, 0.010]' });
    expect(numberIn(worked, 'shim_total', 'in')).toBeCloseTo(0.02, 12);
  });

  test('are none where the gap is already too small', () => {
    const worked = bearing({ finger_reading: '3.167' });
    expect(numbersIn(worked, 'shims', 'in')).toEqual([]);
    expect(numberIn(worked, 'gap_after_shims', 'in')).toBeCloseTo(0.12, 12);
  });

  test('in millimetres come as near as those in inches', () => {
    const worked = bearing({ shim_sizes: '[0.1, 0.25, 0.3, 0.5] mm' });
    expect(numberIn(worked, 'shim_total', 'mm')).toBeCloseTo(0.4, 12);
  });
});

describe('the disc', () => {
  test('brings the fingers back by wear times lever ratio, which closes the gap', () => {
    const worked = bearing({ disc_wear: '0.040', lever_ratio: '4' });
    expect(numberIn(worked, 'finger_travel', 'in')).toBeCloseTo(0.16, 12);
    expect(numberIn(worked, 'gap_when_worn', 'in')).toBeCloseTo(0.165 - 0.16, 12);
  });

  test('that wears further than the gap allows fails the check', () => {
    expect(verdicts(bearing({ disc_wear: '2 mm' })).gap_when_worn).toBe('fail');
  });

  test('reckoned free promises a gap that the clamped one takes back', () => {
    const worked = bearing({ disc_free: '8.4 mm', disc_clamped: '7.6 mm', lever_ratio: '4' });
    expect(numberIn(worked, 'gap_lost_to_cushion', 'mm')).toBeCloseTo(3.2, 12);
  });
});

describe('the heights of the parts', () => {
  const byHand = 0.125 + 6.52 - 0.447 - 1.172 - 2.052 - 3.5 * 0.005 - 3.047 + 0.25;

  test('give a gap of their own that the measured one agrees with', () => {
    const worked = bearing();
    expect(numberIn(worked, 'gap_from_parts', 'in')).toBeCloseTo(byHand, 12);
    expect(numberIn(worked, 'gap_disagrees_by', 'in')).toBeCloseTo(0.165 - byHand, 12);
  });

  test('taken with the free disc promise too wide a gap', () => {
    const worked = bearing();
    expect(numberIn(worked, 'promised_too_much', 'in')).toBeCloseTo(3.5 * 0.03, 12);
    const free = bearing({ disc_clamped: '0.330' });
    const promised = numberIn(worked, 'gap_from_free_disc', 'in');
    expect(numberIn(free, 'gap_from_parts', 'in')).toBeCloseTo(promised, 12);
  });

  test('with a thinner disc bring the fingers toward the gearbox and close the gap', () => {
    const [thick, thin] = [bearing({ disc_clamped: '0.310' }), bearing({ disc_clamped: '0.290' })];
    expect(numberIn(thick, 'finger_lift', 'in')).toBeCloseTo(-3.5 * 0.005, 12);
    expect(numberIn(thin, 'finger_lift', 'in')).toBeCloseTo(3.5 * 0.015, 12);
    const closed = numberIn(thick, 'gap_from_parts', 'in') - numberIn(thin, 'gap_from_parts', 'in');
    expect(closed).toBeCloseTo(3.5 * 0.02, 12);
  });

  test('with a friction face cut deeper close the gap as a thinner disc does', () => {
    const worked = bearing({ face_cut: '0.010' });
    expect(numberIn(worked, 'gap_from_parts', 'in')).toBeCloseTo(byHand - 0.035, 12);
  });

  test.each([
    ['spacer_plate', '0.225', 0.1],
    ['housing_depth', '6.620', 0.1],
    ['crank_flange', '0.547', -0.1],
    ['flywheel_height', '1.272', -0.1],
    ['finger_height', '2.152', -0.1],
  ])('a %s larger by 0.1 in moves the gap by its sign', (name, typed, change) => {
    const worked = bearing({ [name]: typed });
    expect(numberIn(worked, 'gap_from_parts', 'in')).toBeCloseTo(byHand + change, 12);
  });

  test('a plate that is not there is found out', () => {
    expect(verdicts(bearing({ spacer_plate: '0' })).gap_disagrees_by).toBe('fail');
  });

  test('thousandths typed in a field of millimetres are thousandths', () => {
    const worked = bearing({ rivet_depth: '40 thou' });
    expect(numberIn(worked, 'rivet_depth', 'mm')).toBeCloseTo(1.016, 12);
    expect(verdicts(bearing({ finger_wear: '30 thou' })).finger_wear).toBe('fail');
  });
});

describe('the lever ratio', () => {
  test('comes from the radii by hand', () => {
    expect(numberIn(bearing(), 'lever_by_radii', '')).toBeCloseTo(2.3 / 0.65, 12);
  });

  test('that disagrees with the radii fails', () => {
    expect(verdicts(bearing({ lever_ratio: '3.0' })).lever_differs_by).toBe('fail');
    expect(verdicts(bearing({ lever_ratio: '4.0' })).lever_differs_by).toBe('fail');
  });
});

describe('the stroke of the bearing', () => {
  test('is shortest with a new disc and longer with a worn one by the way the fingers came back', () => {
    const worked = bearing();
    const released = numberIn(worked, 'release_travel', 'in');
    expect(numberIn(worked, 'stroke_left_new', 'in')).toBeCloseTo(0.64 - 0.165 - released, 12);
    const gained =
      numberIn(worked, 'stroke_left_worn', 'in') - numberIn(worked, 'stroke_left_new', 'in');
    expect(gained).toBeCloseTo(numberIn(worked, 'finger_travel', 'in'), 12);
  });

  test('too short for gap and release fails', () => {
    const worked = bearing({ bearing_stroke: '0.500', '80-pedal-and-hydraulics/end_margin': '0' });
    expect(verdicts(worked).stroke_left_new).toBe('fail');
  });
});

describe('entries', () => {
  test('repeated readings count with their mean', () => {
    const worked = bearing({ finger_reading: '3.211; 3.214; 3.211' });
    expect(numberIn(worked, 'gap', 'in')).toBeCloseTo(0.165, 12);
  });

  test('millimetres in a field of inches are millimetres', () => {
    const worked = bearing({ finger_reading: '81.5848 mm' });
    expect(numberIn(worked, 'gap', 'in')).toBeCloseTo(0.165, 12);
  });

  test('thousandths in a field of millimetres are thousandths', () => {
    const worked = bearing({ collar_pitch: '62.5 thou/rev' });
    expect(numberIn(worked, 'collar_turns', 'rev')).toBeCloseTo(0.24, 12);
  });

  test('a turning speed where a depth belongs is refused, and only its own waits', () => {
    const worked = bearing({ finger_reading: '3 rpm' });
    const gap = outcomeOf(BOOK, worked.frame, cellIndex(BOOK, SHEET, 'gap'));
    expect(gap).toMatchObject({ state: 'waiting', problem: { waitsFor: 'finger_reading' } });
    expect(numberIn(worked, 'finger_travel', 'in')).toBeCloseTo(0.1225, 12);
  });

  test('a comma that could be either asks which is meant', () => {
    expect(enter(bearing(), 'finger_reading', '3,212')).toMatchObject({
      state: 'failed',
      problem: { code: 'ambiguous-number' },
    });
  });
});
