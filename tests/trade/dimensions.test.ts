import { expect, test } from 'vitest';
import * as DIMENSIONS from '../../src/trade/dimensions.ts';
import { parseUnit } from '../../src/units/parse-unit.ts';

test.each([
  ['LENGTH', 'in'],
  ['SECOND_MOMENT', 'mm^4'],
  ['MASS', 'lb'],
  ['TIME', 's'],
  ['ANGLE', 'deg'],
  ['SPEED', 'mph'],
  ['TURNING_SPEED', 'rpm'],
  ['FORCE', 'lbf'],
  ['TORQUE', 'lbf·ft'],
  ['ENERGY', 'W*s'],
  ['POWER', 'hp'],
  ['PRESSURE', 'psi'],
  ['INERTIA', 'kg*m^2/rad^2'],
  ['TURN_PER_LENGTH', 'rev/mi'],
  ['MASS_PER_LENGTH', 'kg/m'],
])('%s is that of %s', (name, unit) => {
  expect(Object.entries(DIMENSIONS).find(([one]) => one === name)?.[1]).toEqual(
    parseUnit(unit)!.dimension,
  );
});
