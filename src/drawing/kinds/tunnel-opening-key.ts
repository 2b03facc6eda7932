import type { DrawingData } from '../declaration.ts';
import type { KeyEntry } from '../key.ts';
import { line } from '../shapes.ts';
import { createElement, type Pen } from '../svg.ts';
import type { TunnelScene } from './tunnel-opening-scene.ts';
import {
  joinWords,
  sayAssumed,
  sayLeast,
  sayOpening,
  sayTouching,
} from './tunnel-opening-words.ts';

/** ISO 128: long dash and dot, a centre line. */
export const CENTRE_LINE = '12 3 3 3';
/** Short dashes: an edge that is not there to be seen. */
export const HIDDEN = '5 3';
/** Dash and two dots: a part in front of the rest. */
export const IN_FRONT = '11 3 2 3 2 3';

/** What each line of the drawing is; `isLabelled` where the gears stand in the drawing. */
export function listKey(
  pen: Pen,
  data: DrawingData,
  scene: TunnelScene,
  isLabelled: boolean,
): readonly KeyEntry[] {
  const { inks } = pen;
  const assumed = sayAssumed(scene);
  return [
    {
      text: `The opening, ${sayOpening(data, scene)}; the crosses are the saw’s centres.`,
      mark: box(pen, { rx: 6, stroke: inks.set, fill: inks.setWash, 'stroke-width': 2 }),
    },
    ...(scene.least === undefined
      ? []
      : [
          {
            text: `The least hole, ${sayLeast(data)}.`,
            mark: box(pen, { stroke: inks.ink, 'stroke-dasharray': HIDDEN }),
          },
        ]),
    ...keyOfBezel(pen, scene),
    ...keyOfLever(pen, scene, isLabelled),
    keyOfDatum(pen, scene),
    ...(assumed === undefined ? [] : [{ text: assumed }]),
  ];
}

function box(pen: Pen, look: Readonly<Record<string, string | number>>): KeyEntry['mark'] & {} {
  const size = { width: 18, height: 12, fill: 'none' };
  return (x, y) => [createElement(pen, 'rect', { x: x - 9, y: y - 6, ...size, ...look })];
}

function keyOfBezel(pen: Pen, { bezel, peeps }: TunnelScene): readonly KeyEntry[] {
  if (bezel === undefined) return [];
  const stroke = peeps ? pen.inks.warn : pen.inks.ink;
  return [
    {
      text: peeps ? 'The bezel: the opening looks out from under it.' : 'The bezel that covers it.',
      mark: box(pen, { stroke, 'stroke-dasharray': IN_FRONT }),
    },
  ];
}

function keyOfLever(pen: Pen, scene: TunnelScene, isLabelled: boolean): readonly KeyEntry[] {
  const { levers } = scene;
  if (levers.length === 0) return [];
  const gears = isLabelled ? 'each gear' : joinWords(levers.map(({ gear }) => gear));
  const touching = sayTouching(scene);
  const touches = touching === '' ? '' : ` It touches the metal in ${touching}.`;
  const stroke = touching === '' ? pen.inks.ink : pen.inks.warn;
  return [
    {
      text: `The lever where it passes the tunnel, in ${gears}.${touches}`,
      mark: (cx, cy) => [createElement(pen, 'circle', { cx, cy, r: 7, fill: 'none', stroke })],
    },
  ];
}

function keyOfDatum(pen: Pen, { isFar }: TunnelScene): KeyEntry {
  const look = {
    stroke: pen.inks.ink,
    'stroke-width': 1.4,
    'stroke-dasharray': CENTRE_LINE,
  };
  return {
    text: isFar ? 'The datum. It lies further off than it is drawn.' : 'The datum.',
    mark: (x, y) => [createElement(pen, 'path', { d: line(x - 11, y, x + 11, y), ...look })],
  };
}
