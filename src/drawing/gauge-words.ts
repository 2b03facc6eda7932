import { type GaugeData, type GaugeValue, isKnown, sideOf } from './gauge-data.ts';

/** A gauge in sentences: its window, and where each value lies. */
export function describeGauge(data: GaugeData): string {
  const values = data.values.map((value) => `${describeValue(data, value)}.`);
  return [`${describeWindow(data)}.`, ...values].join(' ');
}

function describeWindow({ least, most }: GaugeData): string {
  if (least !== undefined && most !== undefined)
    return `Limit gauge with a window from ${least.text} to ${most.text}`;
  if (least !== undefined) return `Limit gauge: at least ${least.text}`;
  if (most !== undefined) return `Limit gauge: at most ${most.text}`;
  return 'Gauge without limits';
}

function describeValue(data: GaugeData, value: GaugeValue): string {
  const name = value.label ?? data.title;
  if (!isKnown(value)) return `${name} is not known yet`;
  const side = sideOf(data, value.value);
  return `${name} is ${value.text}, ${side === undefined ? 'inside' : `${side} the window`}`;
}

/** What each side of the window means, with the limit it starts from. */
export function describeSides(data: GaugeData): Readonly<Record<'below' | 'above', string>> {
  const side = (word: string, text: string | undefined, limit: string | undefined) =>
    text === undefined || limit === undefined ? '' : `${word} ${limit}: ${text}`;
  return {
    below: side('Below', data.below, data.least?.text),
    above: side('Above', data.above, data.most?.text),
  };
}
