import { expect, test } from 'vitest';
import type { Kind } from '../../src/language/kind.ts';
import { listReadings } from '../../src/page/paper-readings.ts';
import { type Dimension, equalDimensions } from '../../src/units/dimension.ts';
import { openNotebooks } from '../support/notebooks.ts';

const book = openNotebooks();
const LENGTH: Dimension = [1, 0, 0, 0];
const ANGLE: Dimension = [0, 0, 0, 1];
/** Read off a paper, a sidewall or a dash, or chosen: there are no two faces to show. */
const OFF_A_PAPER = [
  '100-mount-and-joint-angles/chosen_slope',
  '120-speedometer-and-electrics/odometer_ran',
  '120-speedometer-and-electrics/measured_run',
  '120-speedometer-and-electrics/flag_turns',
  '130-road-test/odometer_at_start',
  '130-road-test/bedding_distance',
  '20-gearing/tyre_width',
  '50-pilot-bearing-and-flywheel/bolt_pitch',
  '60-clutch-housing/dial_step',
  '60-clutch-housing/total_limit',
  '60-clutch-housing/dowel_sizes',
  '60-clutch-housing/second_ahead',
  '70-release-bearing/wanted_gap',
  '70-release-bearing/cover_disc',
  '70-release-bearing/disc_wear',
  '70-release-bearing/bearing_stroke',
  '80-pedal-and-hydraulics/plate_lift',
  '80-pedal-and-hydraulics/finger_limit',
  '90-shifter-and-tunnel/lever_moved',
];

test.each(book.sheets.map((sheet) => [sheet.name, sheet] as const))(
  'each given of %s that says how it is read, or between what, is on its measuring sheet, once',
  (name, sheet) => {
    const cells = book.cells.filter((cell) => cell.role === 'given' && cell.sheet === name);
    const told = cells.filter(
      (cell) => cell.role === 'given' && (cell.statement.how ?? cell.statement.datum) !== undefined,
    );
    const listed = listReadings(book, sheet).flatMap(({ readings }) => readings);
    expect(listed.map((cell) => cell.name).sort()).toEqual(told.map((cell) => cell.name).sort());
  },
);

test('whatever is measured as a length or an angle says between what, or comes off a paper', () => {
  const silent = book.sheets.flatMap((sheet) =>
    listReadings(book, sheet)
      .flatMap(({ readings }) => readings)
      .filter(({ kind, statement }) => isLengthOrAngle(kind) && statement.datum === undefined)
      .map(({ id }) => id),
  );
  expect(silent).toEqual(OFF_A_PAPER);
});

function isLengthOrAngle(kind: Kind | undefined): boolean {
  if (kind === undefined || !('dimension' in kind)) return false;
  return equalDimensions(kind.dimension, LENGTH) || equalDimensions(kind.dimension, ANGLE);
}
