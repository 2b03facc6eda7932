import { expect, test } from 'vitest';
import { createPilotScene } from '../../../src/drawing/kinds/pilot-scene.ts';
import { createData, type Slots } from '../../support/drawing-data.ts';

const SLOTS: Slots = {
  reach: 0.75,
  nose: 0.75,
  spigot: 0.85,
  bush_depth: 0.05,
  bush_length: 0.75,
  bush_outer: 1,
  bush_bore: 0.752,
  bore_depth: 1.35,
};
const scene = (slots: Slots) => createPilotScene(createData('Pilot', slots, {}));
const span = (slots: Slots, slot: string) => {
  const { from, to } = scene(slots).spans.find((each) => each.slot === slot)!;
  return to - from;
};

test('the spigot reaches into the crank by its reach', () => {
  const spigot = scene(SLOTS).parts.find(({ name }) => name === 'spigot')!;
  expect(spigot.from).toBeCloseTo(-0.75, 12);
  expect(spigot.to).toBeCloseTo(0.1, 12);
});

test('the spigot is in the bush from its tip to the mouth of the bush', () => {
  expect(span(SLOTS, 'engaged')).toBeCloseTo(0.7, 12);
});

test('a spigot that reaches through the bush is in all of it', () => {
  expect(span({ ...SLOTS, reach: 1, spigot: 1.2 }, 'engaged')).toBeCloseTo(0.75, 12);
});

test('a spigot that does not reach the bush is in none of it', () => {
  expect(span({ ...SLOTS, reach: 0.02 }, 'engaged')).toBe(0);
});

test('the room beyond the tip turns negative where the shaft bottoms', () => {
  expect(span(SLOTS, 'end_clearance')).toBeCloseTo(0.6, 12);
  expect(span({ ...SLOTS, reach: 1.4 }, 'end_clearance')).toBeCloseTo(-0.05, 12);
});

test('parts that are not known or not possible are left out by name', () => {
  expect(scene(SLOTS).missing).toEqual(['crank', 'end wall', 'shaft', 'splines', 'hub']);
  expect(scene({ ...SLOTS, bush_bore: 2 }).missing).toContain('bush');
  expect(scene({}).parts).toEqual([]);
});
