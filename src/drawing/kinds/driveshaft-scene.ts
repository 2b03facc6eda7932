import type { DrawingData } from '../declaration.ts';

/** Beyond this a number is no length of anything under a car, in metres. */
const LONGEST = 1e6;
/** A shaft that is not known yet is drawn this many diameters long. */
const USUAL_SLENDERNESS = 16;
const USUAL_DIAMETER = 0.075;

/**
 * Where the parts of a driveshaft stand, in metres along it from the front joint's centre, rearward
 * positive.
 */
export interface DriveshaftScene {
  readonly length: number;
  readonly diameter: number;
  /** Ends of the bare tube, weld to weld. */
  readonly tube: readonly [front: number, rear: number];
  readonly seal: number;
  /** Front end of the slip yoke. */
  readonly yokeEnd: number;
  /** Where that end comes to its stop in the tail. */
  readonly stop: number;
  readonly left: number;
  readonly right: number;
  /** Slots that are drawn as one usually finds them, since they are not known or cannot be. */
  readonly assumed: readonly string[];
}

/** What stands where; a part whose size is not known is drawn in the usual proportion. */
export function createDriveshaftScene(data: DrawingData): DriveshaftScene {
  const assumed: string[] = [];
  const known = (slot: string, usual: number, least = Number.MIN_VALUE): number => {
    const value = data.number(slot);
    if (value !== undefined && value >= least && Math.abs(value) < LONGEST) return value;
    assumed.push(slot);
    return usual;
  };
  const { length, diameter } = sizeOf(data, known);
  const tubeLength = known('tube_length', 0.92 * length);
  const front = known('front_weld', Math.max(0, (length - tubeLength) / 2), 0);
  const seal = -known('seal_to_joint', diameter);
  const yokeEnd = seal - known('engaged', diameter, -LONGEST);
  const stop = yokeEnd - known('set_back', 0, -LONGEST);
  const tube = [front, front + tubeLength] as const;
  return {
    length,
    diameter,
    tube,
    seal,
    yokeEnd,
    stop,
    left: Math.min(stop, yokeEnd, seal) - 0.6 * diameter,
    right: Math.max(length, tube[1]) + 1.3 * diameter,
    assumed,
  };
}

/** Length and diameter, either from the other where only one is known. */
function sizeOf(data: DrawingData, known: (slot: string, usual: number) => number) {
  const isKnown = Number.isFinite(data.number('tube_diameter') ?? Number.NaN);
  if (isKnown) {
    const diameter = known('tube_diameter', USUAL_DIAMETER);
    return { diameter, length: known('length', USUAL_SLENDERNESS * diameter) };
  }
  const length = known('length', USUAL_SLENDERNESS * USUAL_DIAMETER);
  return { length, diameter: known('tube_diameter', length / USUAL_SLENDERNESS) };
}
