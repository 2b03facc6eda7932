import type { DrawingData } from '../declaration.ts';
import type { TunnelScene } from './tunnel-opening-scene.ts';

const SAID: Readonly<Record<string, string>> = {
  hole_front: 'the opening’s front edge',
  hole_rear: 'its rear edge',
  hole_width: 'its width',
};

/** A number is not parted from its unit. */
export function hold(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}

/** `3.26 in by 3 in`; a question mark where one is not known. */
export function sayOpening(data: DrawingData, { hole, assumed }: TunnelScene): string {
  const isKnown = !assumed.includes('hole_front') && !assumed.includes('hole_rear');
  const long = isKnown ? data.showAs('hole_front', hole.rear - hole.front) : '?';
  return `${hold(long)} long and ${hold(data.show('hole_width'))} wide`;
}

/** Gears in which the lever runs into the metal: `2nd and R`. */
export function sayTouching({ levers }: TunnelScene): string {
  const gears = levers.filter(({ touches }) => touches).map(({ gear }) => gear);
  return joinWords(gears);
}

export function joinWords(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** `5.86 in ahead of the datum`. */
export function sayPlace(data: DrawingData, along: number): string {
  const side = along < 0 ? 'ahead of' : 'behind';
  return `${hold(data.showAs('hole_front', Math.abs(along)))} ${side} the datum`;
}

export function sayAssumed({ assumed }: TunnelScene): string | undefined {
  if (assumed.length === 0) return undefined;
  return `Not to scale where not known or not possible: ${assumed.map((slot) => SAID[slot]).join(', ')}.`;
}

/** What the drawing shows, for those who cannot see it. */
export function describeOpening(data: DrawingData, scene: TunnelScene): string {
  const { hole, least, bezel, tunnel, peeps, assumed } = scene;
  const touching = sayTouching(scene);
  const where = assumed.includes('hole_front') || assumed.includes('hole_rear');
  return [
    'From above, the front of the car at the top.',
    `The opening is ${sayOpening(data, scene)}${where ? '' : `, from ${sayPlace(data, hole.front)} to ${sayPlace(data, hole.rear)}`}.`,
    least === undefined ? '' : `The least that will do is ${sayLeast(data)}.`,
    bezel === undefined ? '' : `The bezel ${peeps ? 'does not cover it' : 'covers it'}.`,
    tunnel === undefined ? '' : `The tunnel is flat over ${hold(data.show('tunnel_width'))}.`,
    touching === '' ? '' : `The lever touches the metal in ${touching}.`,
  ]
    .filter(Boolean)
    .join(' ');
}

export function sayLeast(data: DrawingData): string {
  return `${hold(data.show('least_length'))} long and ${hold(data.show('least_width'))} wide`;
}
