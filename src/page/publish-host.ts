import type { BundleTools } from '../export/bundle.ts';
import type { Sheet } from '../sheet/sheet.ts';
import type { Standing } from '../sheet/standing.ts';
import type { Desk } from './desk.ts';
import type { PrintChoices } from './print-choices.ts';

/** What the parts of the view share. */
export interface PublishHost {
  readonly desk: Desk;
  readonly sheet: Sheet;
  readonly tools: BundleTools;
  choices(): PrintChoices;
  /** The desk as it stands now. */
  standing(): Standing;
  /** Tells, in words, what was done or why not. */
  say(sentence: string): void;
}
