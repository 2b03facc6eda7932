import { createTestDesk } from './test-desk.ts';

const SHEET = `
\`\`\`table axles "Axles"
axle,ratio
Tall,3.07
Short,3.73
\`\`\`

\`\`\`table sets "Gear sets"
set,ratios
Four,"[3, 2, 1.4, 1]"
Five,"[3, 2, 1.4, 1, 0.8]"
\`\`\`

\`\`\`given
axle = pick "Tall" from axles.ratio "Axle ratio" from 2 to 5 to 0.01
ratios = pick "Five" from sets.ratios "Gear set"
wheel = 1000 rpm "Wheels" from 500 rpm to 2000 rpm to 10
  how "By the road speed."
  source "invented"
\`\`\`

\`\`\`work
speeds = wheel * axle * ratios "Engine speeds" as rpm to 10
top = last(speeds) "In top gear" as rpm to 10
gear = ordinals(ratios) "Gears"
plain = 2 * 3 "Plain"
\`\`\`
`;

/** A desk with results that can be asked and gone through. */
export function openResult() {
  const made = createTestDesk(SHEET);
  const cell = (name: string) => made.desk.book.find(made.sheet.name, name)!;
  return { ...made, cell };
}

/** Presses the button with these words. */
export function press(element: HTMLElement, words: string): void {
  [...element.querySelectorAll('button')].find((each) => each.textContent === words)!.click();
}
