import type { DrawingData } from '../declaration.ts';

/**
 * One part of the section, in metres: along the axis from the rear face of the crank flange,
 * rearward positive; across, from the axis outward.
 */
export interface PilotPart {
  readonly name: 'crank' | 'end wall' | 'bush' | 'spigot' | 'shaft' | 'splines' | 'hub';
  readonly from: number;
  readonly to: number;
  readonly inner: number;
  readonly outer: number;
}

/** A length that is dimensioned under the section. */
export interface PilotSpan {
  readonly slot: 'reach' | 'engaged' | 'end_clearance' | 'shoulder_clearance';
  readonly from: number;
  readonly to: number;
  /** How far from the axis its ends stand. */
  readonly fromRadius: number;
  readonly toRadius: number;
}

export interface PilotScene {
  readonly parts: readonly PilotPart[];
  readonly spans: readonly PilotSpan[];
  /** Where the friction face of the flywheel stands; undefined where that is not known. */
  readonly face: number | undefined;
  /** Names of the parts that are left out, as they are not known or cannot be. */
  readonly missing: readonly string[];
}

/** How far the crank is drawn on past the bottom of its hole, as a share of the depth. */
const BEYOND = 0.14;

/** What stands where; parts without values, or with impossible ones, are left out. */
export function createPilotScene(data: DrawingData): PilotScene {
  const at = (slot: string) => data.number(slot) ?? Number.NaN;
  const tip = -at('reach');
  const half = (slot: string) => at(slot) / 2;
  const splines = tip + at('spline_from_tip');
  const cut = -at('bore_depth') * (1 + BEYOND);
  const wanted: readonly PilotPart[] = [
    ring('crank', -at('bore_depth'), 0, half('bush_outer'), half('boss')),
    ring('end wall', cut, -at('bore_depth'), 0, half('boss')),
    ring(
      'bush',
      -at('bush_depth') - at('bush_length'),
      -at('bush_depth'),
      half('bush_bore'),
      half('bush_outer'),
    ),
    ring('spigot', tip, tip + at('spigot'), 0, half('nose')),
    ring('shaft', tip + at('spigot'), splines, 0, half('spline_outer')),
    ring('splines', splines, splines + at('spline_length'), 0, half('spline_outer')),
    ring(
      'hub',
      at('hub_near'),
      at('hub_near') + at('hub_length'),
      half('spline_outer'),
      half('hub_outer'),
    ),
  ];
  const parts = wanted.filter(canBe);
  return {
    parts,
    spans: listSpans(data).filter(({ from, to }) => Number.isFinite(from + to)),
    face: data.number('flywheel'),
    missing: wanted.filter((part) => !canBe(part)).map(({ name }) => name),
  };
}

function ring(
  name: PilotPart['name'],
  from: number,
  to: number,
  inner: number,
  outer: number,
): PilotPart {
  return { name, from, to, inner, outer };
}

function canBe({ from, to, inner, outer }: PilotPart): boolean {
  return to > from && inner >= 0 && outer > inner && Number.isFinite(to - from + outer);
}

function listSpans(data: DrawingData): readonly PilotSpan[] {
  const at = (slot: string) => data.number(slot) ?? Number.NaN;
  const known = (slot: string) => (Number.isFinite(at(slot)) ? Math.max(0, at(slot)) : 0);
  const [tip, mouth] = [-at('reach'), -at('bush_depth')];
  const [nose, bush, boss] = [known('nose') / 2, known('bush_outer') / 2, known('boss') / 2];
  const [first, last] = [
    Math.max(tip, mouth - at('bush_length')),
    Math.min(mouth, tip + at('spigot')),
  ];
  return [
    { slot: 'engaged', from: first, to: Math.max(first, last), fromRadius: nose, toRadius: bush },
    {
      slot: 'shoulder_clearance',
      from: mouth,
      to: tip + at('spigot'),
      fromRadius: bush,
      toRadius: nose,
    },
    { slot: 'end_clearance', from: -at('bore_depth'), to: tip, fromRadius: bush, toRadius: nose },
    { slot: 'reach', from: tip, to: 0, fromRadius: nose, toRadius: boss },
  ];
}
