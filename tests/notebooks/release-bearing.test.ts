import { describe, expect, test } from 'vitest';
import { outcomeOf } from '../../src/sheet/solve.ts';
import { spreadOf } from '../../src/sheet/spread/spread.ts';
import {
  cellIndex,
  type Entries,
  enter,
  numberIn,
  numbersIn,
  openNotebooks,
  work,
} from '../support/notebooks.ts';
import { testPractice } from '../support/practice.ts';
import { verdicts } from '../support/verdicts.ts';
import { testWindows } from '../support/windows.ts';

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

  test('straightedge on one side only: its whole thickness is in the gap', () => {
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
  test('finger movement’s sign as it wears: the fingers come back, and the gap closes', () => {
    const worked = bearing({ disc_wear: '0.040', lever_ratio: '4' });
    expect(numberIn(worked, 'finger_travel', 'in')).toBeCloseTo(0.16, 12);
    expect(numberIn(worked, 'gap_when_worn', 'in')).toBeCloseTo(0.165 - 0.16, 12);
    const gaps = ['0', '0.010', '0.030'].map((wear) =>
      numberIn(bearing({ disc_wear: wear }), 'gap_when_worn', 'in'),
    );
    expect(gaps).toEqual(gaps.toSorted((a, b) => b - a));
  });

  test('that wears further than the gap allows fails the check', () => {
    expect(verdicts(bearing({ disc_wear: '2 mm' })).gap_when_worn).toBe('fail');
  });

  test('free against clamped thickness: reckoned free, it promises a gap that clamping takes back', () => {
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
    const worked = bearing({ '50-pilot-bearing-and-flywheel/step_reading': '0.010' });
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

describe('three other clutches', () => {
  test('a metric one: gap, collar, wear and heights by hand in millimetres', () => {
    const worked = bearing({
      finger_reading: '76.40 mm',
      bearing_reading: '72.00 mm',
      straightedge: '12.0 mm',
      wanted_gap: '3.5 mm',
      collar_pitch: '1.25',
      lever_ratio: '4',
      disc_wear: '1.0 mm',
      spacer_plate: '3.0 mm',
      housing_depth: '164.0 mm',
      crank_flange: '12.0 mm',
      flywheel_height: '32.0 mm',
      finger_height: '48.0 mm',
      cover_disc: '8.0 mm',
      disc_clamped: '7.6 mm',
      disc_free: '8.4 mm',
    });
    expect(numberIn(worked, 'gap', 'mm')).toBeCloseTo(4.4, 9);
    expect(numberIn(worked, 'collar_turns', 'rev')).toBeCloseTo(0.72, 9);
    expect(numberIn(worked, 'gap_when_worn', 'mm')).toBeCloseTo(0.4, 9);
    expect(numberIn(worked, 'wear_allowed', 'mm')).toBeCloseTo(1.1, 9);
    // 3 + 164 − 12 − 32 − 48 − 4 × 0.4 − 72 + 12
    expect(numberIn(worked, 'gap_from_parts', 'mm')).toBeCloseTo(13.4, 9);
    expect(numberIn(worked, 'promised_too_much', 'mm')).toBeCloseTo(4 * 0.8, 9);
    expect(verdicts(worked)).toMatchObject({ gap: 'pass', gap_disagrees_by: 'fail' });
  });

  test('a crank flange that lies below the face of the block counts with its sign', () => {
    const worked = bearing({ crank_flange: '-0.053', housing_depth: '6.020' });
    const byHand = 0.125 + 6.02 + 0.053 - 1.172 - 2.052 - 3.5 * 0.005 - 3.047 + 0.25;
    expect(numberIn(worked, 'gap_from_parts', 'in')).toBeCloseTo(byHand, 12);
  });

  test('fingers that touch a bearing already: the gap is below nought and the collar goes back', () => {
    const worked = bearing({ finger_reading: '3.000', bearing_reading: '3.020' });
    expect(numberIn(worked, 'gap', 'in')).toBeCloseTo(-0.02, 12);
    expect(numberIn(worked, 'collar_turns', 'rev')).toBeCloseTo((-0.17 * 25.4) / 1.5, 12);
    expect(numberIn(worked, 'wear_allowed', 'in')).toBeLessThan(0);
    expect(verdicts(worked)).toMatchObject({ gap: 'fail', gap_when_worn: 'fail' });
  });
});

describe('how sure the gap is before the parts are bolted up', () => {
  const [spread] = spreadOf(BOOK, bearing().frame, cellIndex(BOOK, SHEET, 'gap_from_parts'));

  test('in the worst case every tolerance of the chain adds up, the disc by its lever', () => {
    const parts = [0.002, 0.005, 0.003, 0.004, 0.01, 3.5 * 0.001, 0.003, 0.001];
    const worst = parts.reduce((sum, part) => sum + part, 0) * 0.0254;
    expect(spread!.worst.to - spread!.value).toBeCloseTo(worst, 12);
  });

  test('and the bearing’s own reading drops out of the comparison with the measured gap', () => {
    const [found] = spreadOf(BOOK, bearing().frame, cellIndex(BOOK, SHEET, 'gap_disagrees_by'));
    const parts = [0.002, 0.005, 0.003, 0.004, 0.01, 3.5 * 0.001, 0.003, 0.001];
    const worst = parts.reduce((sum, part) => sum + part, 0) * 0.0254;
    expect(found!.worst.to - found!.value).toBeCloseTo(worst, 12);
  });
});

describe('windows', () => {
  const end = { '80-pedal-and-hydraulics/end_margin': '0', bearing_stroke: '0.500' };
  testWindows(BOOK, SHEET, [
    ['gap', 'below', { finger_reading: '3.167' }, 'ride the bearing'],
    ['gap', 'above', { finger_reading: '3.250' }, 'run out of stroke'],
    ['lever_differs_by', 'below', { lever_ratio: '4.0' }, 'less than was entered'],
    ['lever_differs_by', 'above', { lever_ratio: '3.0' }, 'more than was entered'],
    ['gap_disagrees_by', 'below', { finger_reading: '3.120' }, 'One of the readings is wrong'],
    ['gap_disagrees_by', 'above', { spacer_plate: '0' }, 'One of the readings is wrong'],
    ['gap_when_worn', 'below', { disc_wear: '0.050' }, 'before the disc is worn out'],
    ['stroke_left_new', 'below', end, 'too near to its end'],
    ['stroke_left_worn', 'below', { ...end, disc_wear: '0' }, 'the new disc fails by more'],
    ['finger_wear', 'above', { finger_wear: '0.7' }, 'run against the tips'],
    ['finger_uneven', 'above', { finger_uneven: '1.1' }, 'drags on one side'],
    ['plate_hollow', 'above', { plate_hollow: '0.55' }, 'grips on its rim'],
    ['disc_runout', 'above', { disc_runout: '0.8' }, 'touches before it should'],
    ['rivet_depth', 'below', { rivet_depth: '0.2' }, 'cut the flywheel'],
  ]);
});

describe('practice', () => {
  testPractice(BOOK, SHEET, [
    ['The gap', 'That gap has the straightedge in it'],
    ['The gap', 'The straightedge was taken off the one side and not put back on the other'],
    ['The gap', 'Taken off on one side and added on the other'],
    ['The gap', 'Taken off on both sides of the sum'],
    ['The gap', 'That is what the gap is out by'],
    ['The gap', 'The readings were added'],
    ['The gap from the parts', 'The free thickness'],
    ['The gap from the parts', 'The sign of the disc'],
    ['The gap from the parts', 'The disc is left out'],
    ['The gap from the parts', 'The disc without the lever'],
    ['The gap from the parts', 'The spacer plate is left out'],
    ['The gap from the parts', 'The bearing was read over the straightedge'],
    ['How far to turn it', 'That takes the whole gap away'],
    ['How far to turn it', 'Inches over millimetres'],
    ['How far to turn it', 'Multiplied by the pitch'],
    ['How far to turn it', 'That is the gap that is wanted'],
    ['The gap of a worn disc', 'The gap does not open with wear'],
    ['The gap of a worn disc', 'The lever is left out'],
    ['The gap of a worn disc', 'Divided by the lever ratio'],
    ['The gap of a worn disc', 'Counted for each face'],
    ['The gap of a worn disc', 'That is how far the fingers come back'],
  ]);
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

  test('thousandths typed in a field of millimetres without their unit fail the window', () => {
    const worked = bearing({ rivet_depth: '47', finger_wear: '8' });
    expect(numberIn(worked, 'finger_wear', 'mm')).toBe(8);
    expect(verdicts(worked).finger_wear).toBe('fail');
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
