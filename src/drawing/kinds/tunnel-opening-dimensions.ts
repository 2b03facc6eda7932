import type { DrawingData } from '../declaration.ts';
import { type LevelDimension, layOutDimensions } from '../dimension-rows.ts';
import type { Pen } from '../svg.ts';
import { textWidth } from '../text-width.ts';
import type { TunnelFrame } from './tunnel-opening-frame.ts';
import { type Plan, roundingOf, type TunnelScene } from './tunnel-opening-scene.ts';
import { hold } from './tunnel-opening-words.ts';

const SIZE = 13;
/** A width that is told only where it can be seen, in px. */
const SEEN = 0.5;

/** A length fore and aft, with its words; `at` is how far right its parts reach. */
interface Span {
  readonly from: number;
  readonly to: number;
  readonly at: readonly [from: number, to: number];
  readonly lead: string;
  readonly text: string;
  readonly part: string;
}

function spansAlong(data: DrawingData, scene: TunnelScene): readonly Span[] {
  const { hole, bezel, centres, datum, extent, assumed } = scene;
  if (assumed.length > 0) return [];
  const middle = (hole.left + hole.right) / 2;
  const say = (value: number, words: string) => {
    const lead = hold(data.showAs('hole_front', Math.abs(value)));
    return { lead, text: `${lead} ${words}` };
  };
  const names = centres.length === 1 ? ['centre'] : ['front centre', 'rear centre'];
  const toCentres = centres.map((along, i) => ({
    ...say(along, `datum to ${names[i]}`),
    from: along,
    to: datum,
    at: [middle, extent.right] as const,
    part: `to-${names[i]!.replace(' ', '-')}`,
  }));
  const lengthOf = ({ front, rear, right }: Plan, part: string): Span => ({
    ...say(rear - front, part),
    from: front,
    to: rear,
    at: [right, right],
    part: `${part}-length`,
  });
  return [
    lengthOf(hole, 'opening'),
    ...(bezel === undefined ? [] : [lengthOf(bezel, 'bezel')]),
    ...toCentres.toSorted((a, b) => Math.abs(a.from) - Math.abs(b.from)),
  ];
}

/** Width of the columns beside the figure, and how high it must be for their words, in px. */
export function measureColumns(data: DrawingData, scene: TunnelScene) {
  const spans = spansAlong(data, scene);
  const high = Math.max(0, ...spans.map(({ text }) => textWidth(text, SIZE, 700))) + 8;
  const unplaced = spans.map((span) => ({ ...span, from: 0, to: 0, fromY: 0, toY: 0 }));
  return { width: layOutDimensions(unplaced, high).height, high };
}

/** Spans as level dimensions of the figure turned a quarter: what was down is left, what was right is down. */
export function dimensionsAlong(
  data: DrawingData,
  scene: TunnelScene,
  frame: TunnelFrame,
  pen: Pen,
): readonly LevelDimension[] {
  return spansAlong(data, scene).map((span) => ({
    ...span,
    from: frame.height - frame.y(span.from),
    to: frame.height - frame.y(span.to),
    fromY: frame.x(span.at[0]),
    toY: frame.x(span.at[1]),
    ...(span.part.endsWith('centre') ? { colour: pen.inks.set } : {}),
  }));
}

export function dimensionsAcross(
  data: DrawingData,
  scene: TunnelScene,
  frame: TunnelFrame,
  pen: Pen,
): readonly LevelDimension[] {
  const { hole, bezel, tunnel, assumed } = scene;
  const level = (slot: string, words: string, ends: readonly [number, number], back: number) => {
    const lead = hold(data.showAs(slot, Math.abs(data.number(slot) ?? 0)));
    const y = frame.y(back);
    const [from, to] = [frame.x(ends[0]), frame.x(ends[1])];
    return { lead, text: `${lead} ${words}`, from, to, fromY: y, toY: y, part: slot };
  };
  const aside = data.number('hole_aside') ?? 0;
  const rows: LevelDimension[] = [];
  if (Math.abs(aside) * frame.scale >= SEEN) {
    const side = aside > 0 ? 'right' : 'left';
    rows.push(level('hole_aside', `${side} of the tunnel’s middle`, [0, aside], hole.rear));
  }
  if (!assumed.includes('hole_width')) {
    const width = level('hole_width', 'saw', [hole.left, hole.right], hole.rear - roundingOf(hole));
    rows.push({ ...width, colour: pen.inks.set });
  }
  if (bezel !== undefined)
    rows.push(level('bezel_width', 'bezel', [bezel.left, bezel.right], bezel.rear));
  if (tunnel !== undefined)
    rows.push(
      level('tunnel_width', 'flat of the tunnel', [-tunnel / 2, tunnel / 2], scene.extent.rear),
    );
  return rows;
}
