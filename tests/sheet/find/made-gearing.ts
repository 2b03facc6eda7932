import type { GivenCell } from '../../../src/sheet/cell.ts';
import { block, type MadeBook, makeBook } from '../made-book.ts';

/** Two sheets on which questions are asked: engine speed from axle and gears, and a shaft. */
export function makeGearing(): MadeBook {
  return makeBook({
    '10-gearing.md': [
      block(
        'table axles "Axles"',
        'axle,ratio,note',
        'Tall,3.07,quiet',
        'As fitted,3.25,worn',
        'Short,3.73,lively',
      ),
      block(
        'table sets "Gear sets"',
        'set,ratios',
        'Four,"[3, 2, 1.4, 1]"',
        'Five,"[3, 2, 1.4, 1, 0.8]"',
      ),
      block(
        'given',
        'axle_ratio = pick "As fitted" from axles.ratio "Axle ratio" from 2.5 to 5 to 0.01',
        'ratios = pick "Five" from sets.ratios "Gear set"',
        'wheel = 1000 rpm "Wheels" to 10',
        'colour = "red" "Colour"',
        'spare = blank mm "Spare"',
      ),
      block(
        'work',
        'speeds = wheel * axle_ratio * ratios "Engine speed" as rpm to 10',
        'top = last(speeds) "Engine speed in top gear" as rpm to 10',
        'gear = ordinals(ratios) "Gears"',
        'apart = axle_ratio * 2 + 0 * spare / 1 mm "Apart"',
      ),
    ].join('\n'),
    '20-shaft.md': [
      block('from 10-gearing', 'top'),
      block('given', 'split = 2 "Split" from 1 to 4'),
      block('work', 'shaft = top / split "Shaft" as rpm to 10'),
    ].join('\n'),
  });
}

export function givenOf(made: MadeBook, name: string): GivenCell {
  return made.cell(name) as GivenCell;
}
