import { describe, expect, test } from 'vitest';
import { outcomeOf } from '../../src/sheet/solve.ts';
import { warningsOf } from '../../src/sheet/warnings.ts';
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
const SHEET = '50-pilot-bearing-and-flywheel';
const pilot = (entries: Entries = {}) => work(BOOK, SHEET, entries);

/** Lamé's two rings, in any unit of length: how much the bore of the inner one closes. */
function closing(interference: number, fit: number, bore: number, outside: number): number {
  const [bush, crank] = [60, 205];
  const around = (outside ** 2 + fit ** 2) / (outside ** 2 - fit ** 2) + 0.29;
  const within = (fit ** 2 + bore ** 2) / (fit ** 2 - bore ** 2) - 0.33;
  const pressure = interference / (fit * (around / crank + within / bush));
  return (2 * pressure * fit ** 2 * bore) / (bush * (fit ** 2 - bore ** 2));
}

describe('the worked example', () => {
  const worked = pilot();

  test('is pressed in by one and a half thou, and closes by nearly all of it', () => {
    expect(numberIn(worked, 'interference', 'thou')).toBeCloseTo(1.5, 9);
    const closed = closing(0.0015, 1.001, 0.753, 2.5);
    expect(numberIn(worked, 'closing', 'in')).toBeCloseTo(closed, 12);
    expect(closed / 0.0015).toBeGreaterThan(0.85);
    expect(numberIn(worked, 'clearance', 'in')).toBeCloseTo(0.753 - closed - 0.7495, 12);
  });

  test('orders hole and bush, bore and spigot by the book of limits', () => {
    expect(numbersIn(worked, 'press_limits', 'thou').map((x) => Math.round(10 * x) / 10)).toEqual([
      1000, 1000.8, 1000.8, 1001.3,
    ]);
    expect(numberIn(worked, 'press_most', 'thou')).toBeCloseTo(1.3, 9);
    expect(numberIn(worked, 'running_least', 'thou')).toBeCloseTo(0.8, 9);
    expect(numberIn(worked, 'running_most', 'thou')).toBeCloseTo(2.8, 9);
  });

  test('reaches by the stack, and is engaged by what bush and spigot have in common', () => {
    const reach = 6.948 - 6.52 - 0.125 + 0.447;
    expect(numberIn(worked, 'nose_reach', 'in')).toBeCloseTo(reach, 12);
    expect(numberIn(worked, 'engaged_flush', 'in')).toBeCloseTo(reach - 0.45, 12);
    expect(numberIn(worked, 'engaged', 'in')).toBeCloseTo(reach - 0.05, 12);
    expect(numberIn(worked, 'end_clearance', 'in')).toBeCloseTo(1.35 - reach, 12);
    expect(numberIn(worked, 'shoulder_clearance', 'in')).toBeCloseTo(0.05 + 0.85 - reach, 12);
  });

  test('has its hub on the splines and clear of the pilot', () => {
    expect(numberIn(worked, 'hub_near', 'in')).toBeCloseTo(0.95, 12);
    expect(numberIn(worked, 'spline_engaged', 'in')).toBeCloseTo(1, 12);
    expect(numberIn(worked, 'spline_ahead', 'in')).toBeCloseTo(0.95 + 0.75 - 1.3, 12);
    expect(numberIn(worked, 'hub_to_pilot', 'in')).toBeCloseTo(1, 12);
  });

  test('stretches its bolts by torque over K and diameter', () => {
    const pull = (68 * 12) / (0.18 * 0.4375);
    const area = (Math.PI / 4) * (0.4375 - 0.9743 / 20) ** 2;
    expect(numberIn(worked, 'bolt_pull', 'lbf')).toBeCloseTo(pull, 8);
    expect(numberIn(worked, 'bolt_pull_low', 'lbf')).toBeCloseTo(0.75 * pull, 8);
    expect(numberIn(worked, 'bolt_share', '')).toBeCloseTo(pull / area / 120000, 9);
    const carried = (6 * 0.75 * pull * 0.12 * 3) / 2 / 12;
    expect(numberIn(worked, 'flange_torque', 'lbf·ft')).toBeCloseTo(carried, 8);
  });

  test('fails in the plain bush, on purpose, and passes in everything else', () => {
    const found = Object.entries(verdicts(worked));
    expect(found.filter(([, verdict]) => verdict !== 'pass')).toEqual([
      ['engaged_flush_share', 'fail'],
    ]);
  });
});

describe('three other gearboxes', () => {
  test('a short shaft in a deep housing does not reach even the sleeve', () => {
    const worked = pilot({ input_length: '6.700', '70-release-bearing/housing_depth': '6.600' });
    expect(numberIn(worked, 'nose_reach', 'in')).toBeCloseTo(0.422, 12);
    expect(numberIn(worked, 'engaged', 'in')).toBeCloseTo(0.372, 12);
    expect(verdicts(worked)).toMatchObject({ engaged_share: 'fail', end_clearance: 'pass' });
  });

  test('a long shaft bottoms, and its shoulder meets the bush', () => {
    const worked = pilot({ input_length: '7.548' });
    expect(numberIn(worked, 'end_clearance', 'in')).toBeCloseTo(0, 12);
    expect(numberIn(worked, 'shoulder_clearance', 'in')).toBeCloseTo(-0.45, 12);
    expect(verdicts(worked)).toMatchObject({ end_clearance: 'fail', shoulder_clearance: 'fail' });
  });

  test('a metric crank and bush, all of it typed in millimetres', () => {
    const worked = pilot({
      crank_bore: '21.98 mm',
      bush_outer: '22.02 mm',
      bush_bore_free: '15.10 mm',
      nose_diameter: '14.99 mm',
      flange_outer: '60 mm',
    });
    const closed = closing(0.04, 22.02, 15.1, 60);
    expect(numberIn(worked, 'interference', 'mm')).toBeCloseTo(0.04, 12);
    expect(numberIn(worked, 'clearance', 'mm')).toBeCloseTo(0.11 - closed, 12);
  });
});

describe('what people get wrong', () => {
  test('the clearance in the hand is not the clearance in the crank', () => {
    const worked = pilot({ nose_diameter: '0.7520' });
    expect(numberIn(worked, 'clearance_free', 'thou')).toBeCloseTo(1, 9);
    expect(numberIn(worked, 'clearance', 'thou')).toBeLessThan(0);
    expect(verdicts(worked).clearance).toBe('fail');
  });

  test('the bore measured in place counts, and theory does not', () => {
    const worked = pilot({ bush_bore_in_place: '0.7510' });
    expect(numberIn(worked, 'clearance', 'thou')).toBeCloseTo(1.5, 9);
    const other = pilot({ bush_bore_in_place: '0.7510', bush_bore_free: '0.7600' });
    expect(numberIn(other, 'clearance', 'thou')).toBeCloseTo(1.5, 9);
  });

  test('a bush that is smaller than its hole says that nothing presses', () => {
    const worked = pilot({ bush_outer: '0.9990' });
    expect(numberIn(worked, 'interference', 'thou')).toBeCloseTo(-0.5, 9);
    expect(warningsOf(BOOK, worked.frame, cellIndex(BOOK, SHEET, 'closing'))).toEqual([
      expect.stringContaining('nothing presses'),
    ]);
  });

  test('a plate that was forgotten lets the spigot seem to reach further', () => {
    const [with_, without] = [pilot(), pilot({ '70-release-bearing/spacer_plate': '0' })];
    const change = numberIn(without, 'nose_reach', 'in') - numberIn(with_, 'nose_reach', 'in');
    expect(change).toBeCloseTo(0.125, 12);
  });

  test('a crank flange that stands further back meets the spigot sooner', () => {
    const worked = pilot({ '70-release-bearing/crank_flange': '0.547' });
    expect(numberIn(worked, 'nose_reach', 'in')).toBeCloseTo(0.85, 12);
  });

  test('an engagement is never longer than the bush or the spigot', () => {
    expect(numberIn(pilot({ input_length: '8' }), 'engaged', 'in')).toBeCloseTo(0.75, 12);
    const short = pilot({ input_length: '8', spigot_length: '0.5' });
    expect(numberIn(short, 'engaged', 'in')).toBeCloseTo(0.5, 12);
  });

  test('a disc put in back to front comes near to the pilot', () => {
    const worked = pilot({ hub_inset: '0.850', hub_length: '1.000' });
    expect(numberIn(worked, 'hub_near', 'in')).toBeCloseTo(0.25, 12);
    expect(numberIn(worked, 'spline_ahead', 'in')).toBeLessThan(0);
    expect(verdicts(worked).spline_share).toBe('fail');
  });

  test('the low reading of a dial is below nought and adds to the run-out', () => {
    const worked = pilot({ face_high: '0.004', face_low: '-0.007' });
    expect(numberIn(worked, 'face_runout', 'thou')).toBeCloseTo(11, 9);
  });

  test('the same run-out at a smaller radius is a worse lean', () => {
    const lean = (radius: string) => numberIn(pilot({ face_radius: radius }), 'runout_share', '');
    expect(lean('2.5')).toBeCloseTo(2 * lean('5'), 9);
  });

  test('anti-seize at the maker’s torque passes the proof stress', () => {
    const worked = pilot();
    const pull = numberIn(worked, 'pull_antiseize', 'lbf');
    expect(pull / numberIn(worked, 'bolt_pull', 'lbf')).toBeCloseTo(0.18 / 0.12, 9);
    expect(numberIn(worked, 'antiseize_over', '')).toBeGreaterThan(0);
  });

  test('a dry bolt is stretched less at the same torque than an oiled one', () => {
    const [dry, oiled] = [pilot({ bolt_condition: 'Black' }), pilot()];
    const share = numberIn(dry, 'bolt_pull', 'lbf') / numberIn(oiled, 'bolt_pull', 'lbf');
    expect(share).toBeCloseTo(0.18 / 0.3, 9);
  });

  test('a face cut without its seat is told to the release bearing', () => {
    const cut = pilot({ step_reading: '0.010' });
    const before = numberIn(pilot(), '70-release-bearing/gap_from_parts', 'in');
    const after = numberIn(cut, '70-release-bearing/gap_from_parts', 'in');
    expect(after - before).toBeCloseTo(-3.5 * 0.01, 12);
  });
});

describe('entries', () => {
  test('thousandths typed in a field of millimetres are thousandths', () => {
    const worked = pilot({ ring_size: '1378 thou' });
    expect(numberIn(worked, 'ring_size', 'mm')).toBeCloseTo(35.0012, 9);
    expect(numbersIn(worked, 'ring_hole', 'mm')).toHaveLength(2);
  });

  test('a size without a zone in the book is refused in words', () => {
    const worked = pilot({ ring_size: '1378' });
    const outcome = outcomeOf(BOOK, worked.frame, cellIndex(BOOK, SHEET, 'ring_hole'));
    expect(outcome).toMatchObject({ state: 'failed', problem: { message: expect.any(String) } });
  });

  test('a class that no book has is refused, and only its own waits', () => {
    const worked = pilot({ press_class: 'LN9' });
    const state = (name: string) =>
      outcomeOf(BOOK, worked.frame, cellIndex(BOOK, SHEET, name)).state;
    expect([state('press_limits'), state('press_least')]).toEqual(['failed', 'waiting']);
    expect(numberIn(worked, 'interference', 'thou')).toBeCloseTo(1.5, 9);
  });

  test('a torque in newton metres is the same torque', () => {
    const worked = pilot({ maker_torque: '92.1956204865 N·m' });
    const pull = numberIn(worked, 'bolt_pull', 'lbf');
    expect(pull / numberIn(pilot(), 'bolt_pull', 'lbf')).toBeCloseTo(1, 6);
  });

  test('a force in place of a torque is refused', () => {
    expect(enter(pilot(), 'maker_torque', '68 N').state).toBe('failed');
  });
});

describe('windows', () => {
  testWindows(BOOK, SHEET, [
    ['interference', 'below', { crank_bore: '1.0002' }, 'turn in the crank'],
    ['interference', 'above', { crank_bore: '0.9985' }, 'Turn the bush down'],
    ['clearance', 'below', { nose_diameter: '0.7510' }, 'picks up on the spigot'],
    ['clearance', 'above', { nose_diameter: '0.7480' }, 'The spigot wanders'],
    ['pilot_runout', 'above', { pilot_runout: '0.003' }, 'swung round in a circle'],
    ['engaged_flush_share', 'below', {}, 'only just enters'],
    ['engaged_share', 'below', { bush_depth: '0.400' }, 'does not reach'],
    ['end_clearance', 'below', { bore_depth: '0.800' }, 'bottoms in the crank'],
    ['shoulder_clearance', 'below', { spigot_length: '0.720' }, 'meets the bush before'],
    ['spline_share', 'below', { spline_length: '1.2' }, 'hub hangs over'],
    ['hub_to_pilot', 'below', { hub_inset: '1.030' }, 'rubs on the pilot'],
    ['flange_runout', 'above', { flange_runout: '0.003' }, 'A bruise or dirt'],
    ['step_wrong_by', 'below', { step_reading: '-0.004' }, 'The seat has been cut'],
    ['step_wrong_by', 'above', { step_reading: '0.004' }, 'The face has been cut'],
    ['face_runout', 'above', { face_high: '0.0025' }, 'Judder'],
    ['runout_share', 'above', { face_high: '0.0050' }, 'even a heavy engine'],
    ['bolt_share', 'above', { maker_torque: '90' }, 'Stretched near to yield'],
    ['bolt_share_high', 'above', { maker_torque: '80' }, 'one of them may yield'],
    ['flange_reserve', 'below', { joint_friction: '0.05' }, 'creep on the crank'],
  ]);
});

describe('practice', () => {
  testPractice(BOOK, SHEET, [
    ['A bush that closes', 'That is the clearance in the hand'],
    ['A bush that closes', 'The closing was taken off once too often'],
    ['A bush that closes', 'That reckons the bore from the interference'],
    ['A bush that closes', 'That is the play on one side'],
    ['How far the spigot reaches', 'The spacer plate is left out'],
    ['How far the spigot reaches', 'The plate was added'],
    ['How far the spigot reaches', 'That is how far the tip stands in front of the block'],
    ['How far the spigot reaches', 'The flange was taken off'],
    ['How far the spigot reaches', 'Housing and shaft alone'],
    ['How far the spigot reaches', 'That is how far the spigot reaches into the bush'],
    ['What the dial says', 'The low reading is below nought'],
    ['What the dial says', 'Half of it is how far the face stands off on each side'],
    ['What the dial says', 'One side alone'],
    ['What a torque stretches', 'Foot-pounds over inches'],
    ['What a torque stretches', 'K is left out'],
    ['What a torque stretches', 'Multiplied by K'],
    ['What a torque stretches', 'The radius in place of the diameter'],
    ['What a torque stretches', 'That is the tension with anti-seize on the thread'],
  ]);
});
