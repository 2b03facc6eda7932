import type { Spread } from '../sheet/spread/spread.ts';
import { describeConfidence } from '../sheet/spread/spread-words.ts';
import { judgeUnderDoubt } from '../sheet/spread/verdict-under-doubt.ts';
import type { Verdict } from '../sheet/verdict.ts';

export { spreadOf } from '../sheet/spread/spread.ts';
export { createSpreadLine } from './spread-line.ts';

/** What a verdict says when the doubt of the readings is taken into account. */
export function describeVerdictUnderDoubt(
  verdict: Verdict,
  spreads: readonly Spread[],
): string | undefined {
  const confidence = judgeUnderDoubt(verdict, spreads);
  return confidence && describeConfidence(confidence);
}
