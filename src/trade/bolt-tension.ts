import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import type { Value } from '../language/kind.ts';
import { FORCE, LENGTH } from './dimensions.ts';

/** Half the thread angle of ISO and Unified threads. */
const FLANK = Math.PI / 6;
/** How much smaller than the outside the pitch diameter is, for each pitch, of a 60° thread. */
const PITCH_DEPTH = (3 * Math.sqrt(3)) / 8;
/** Mean radius of the turning face under a hexagon head, in bolt diameters, taken as in the source. */
const HEAD = 0.625;

/** The K of T = K F d, from friction. */
export const NUT_FACTOR: FunctionDeclaration = {
  name: 'nut_factor',
  doc: 'The factor K of torque = K × tension × diameter, from the friction in a 60° thread and under a hexagon head.',
  parameters: [
    { name: 'diameter', shape: 'either', dimension: LENGTH, doc: 'nominal diameter of the thread' },
    { name: 'pitch', shape: 'either', dimension: LENGTH, doc: 'from one thread to the next' },
    { name: 'thread_friction', shape: 'either', doc: 'coefficient of friction in the thread' },
    { name: 'head_friction', shape: 'either', doc: 'coefficient of friction under the head' },
  ],
  result: { shape: 'lifted' },
  work: { type: 'each', run: nutFactor, refuse: refuseThread },
  example: ['nut_factor(20 mm, 0 mm, 0, 0.16)', '0.1'],
  source: "Shigley's Mechanical Engineering Design, 9th edition, equation 8-26, from memory",
  validity:
    'a single-start 60° thread and a plain hexagon head; friction of a dry bolt varies from 0.08 to 0.25 with what is on it',
};

/** Tension of a bolt in a tightened joint when something pulls at it. */
export const LOADED_BOLT_TENSION: FunctionDeclaration = {
  name: 'loaded_bolt_tension',
  doc: 'Tension of a tightened bolt when a load pulls its joint apart: the bolt takes up only its share by stiffness, the joint gives up the rest.',
  parameters: [
    { name: 'preload', shape: 'either', dimension: FORCE, doc: 'tension before the load comes' },
    { name: 'load', shape: 'either', dimension: FORCE, doc: 'load on this bolt' },
    { name: 'bolt_stiffness', shape: 'either', dimension: 'a', doc: 'stiffness of the bolt' },
    {
      name: 'parts_stiffness',
      shape: 'either',
      dimension: 'a',
      doc: 'stiffness of the parts under its head, in the same unit',
    },
  ],
  result: { shape: 'lifted', dimension: FORCE },
  work: {
    type: 'each',
    run: (preload, load, bolt, parts) => preload + share(bolt, parts) * load,
    refuse: (_preload, _load, bolt, parts) =>
      bolt > 0 && parts > 0 ? undefined : 'bolt and parts have a stiffness above 0',
  },
  example: ['loaded_bolt_tension(10 kN, 4 kN, 1, 3)', '11 kN'],
  source:
    "published: Shigley's Mechanical Engineering Design, 9th edition, example 8-3, second-hand",
  validity: 'as long as the joint stays closed',
  outside: (...values) => opens(values),
};

function nutFactor(diameter: number, pitch: number, thread: number, head: number): number {
  const pitchDiameter = diameter - PITCH_DEPTH * pitch;
  const slope = pitch / (Math.PI * pitchDiameter);
  const grip = thread / Math.cos(FLANK);
  return (pitchDiameter / (2 * diameter)) * ((slope + grip) / (1 - slope * grip)) + HEAD * head;
}

function refuseThread(diameter: number, pitch: number): string | undefined {
  if (!(diameter > 0)) return 'a thread has a diameter above 0';
  return pitch >= 0 && PITCH_DEPTH * pitch < diameter
    ? undefined
    : 'the pitch is 0 or more, and the thread not deeper than the bolt';
}

function share(bolt: number, parts: number): number {
  return bolt / (bolt + parts);
}

function opens(values: readonly Value[]): string | undefined {
  if (values.some((value) => typeof value !== 'number')) return undefined;
  const [preload, load, bolt, parts] = values as readonly number[];
  return (1 - share(bolt!, parts!)) * load! > preload!
    ? 'the load is more than the joint was tightened to: it opens, and the bolt takes all of it'
    : undefined;
}
