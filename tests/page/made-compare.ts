import { vi } from 'vitest';
import { createCompareView } from '../../src/page/compare-view.ts';
import { createTestDesk } from './test-desk.ts';

const SHEET = `
\`\`\`table axles "Axles"
axle,ratio
Tall,3.07
Short,3.73
\`\`\`

\`\`\`given
axle = 3.25 "Axle" from 2 to 5 to 0.01
fitted = pick "Tall" from axles "Set"
wide = 1 in "Wide"
\`\`\`

\`\`\`work
engine = axle * 800 rpm "Engine speed" as rpm to 10
twice = 2 * 2 "Twice"
\`\`\`

\`\`\`check
engine between 2000 rpm and 2800 rpm "At cruise"
\`\`\`

\`\`\`chart "Over axle"
engine as rpm over axle from 2 to 5
\`\`\`
`;

/** A comparison on a page, with what a person does to it; `more` stands behind the sheet’s own blocks. */
export function openCompare(more = '') {
  const made = createTestDesk(SHEET + more);
  const element = made.show(createCompareView(made.desk, made.sheet));
  const find = <E extends HTMLElement>(id: string) => document.getElementById(id) as E;
  return {
    ...made,
    element,
    find,
    click: (id: string) => find(id).click(),
    type(id: string, text: string): void {
      const input = find<HTMLInputElement>(id);
      input.value = text;
      input.dispatchEvent(new Event('change'));
    },
    choose(id: string, label: string): void {
      const select = find<HTMLSelectElement>(id);
      select.value = [...select.options].find((option) => option.textContent === label)!.value;
      select.dispatchEvent(new Event('change'));
    },
    settled: (check: () => void) => vi.waitFor(check),
  };
}

/** One proposal with another axle. */
export function openProposal(axle = '3.73', more = '') {
  const opened = openCompare(more);
  opened.click('proposal-add');
  opened.choose('proposal-0-given', 'Axle');
  opened.type('proposal-0-0', axle);
  return opened;
}
