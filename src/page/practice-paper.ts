import { own } from '../job/record.ts';
import {
  drawSheet,
  type PracticeSheet,
  readSeed,
  type SheetProblem,
} from '../sheet/practice/practice-sheet.ts';
import type { Sheet } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import { createScrollBox } from './scroll-box.ts';
import type { View } from './view.ts';

const MOST_PROBLEMS = 60;

/** Problems to print with the answers on a page of their own, and the record of answers on this page. */
export function createPracticePaper(desk: Desk, sheet: Sheet): View {
  const seed = h('input', { id: 'paper-seed', type: 'text', autocomplete: 'off' });
  const count = h('input', { id: 'paper-count', type: 'text', inputmode: 'numeric' });
  [seed.value, count.value] = ['1', '6'];
  const paper = h('div', { class: 'practice-paper' });
  const record = h('div', { class: 'practice-record' });

  function deal(): void {
    const wanted = Math.round(Number(count.value));
    if (!(wanted >= 1 && wanted <= MOST_PROBLEMS)) {
      const words = `From 1 to ${MOST_PROBLEMS} problems, as a whole number such as 6.`;
      fill(paper, h('p', { class: 'error' }, h('b', {}, 'Error: '), words));
      return;
    }
    const options = { seed: readSeed(seed.value), count: wanted, system: desk.system() };
    fill(paper, ...layOut(sheet, drawSheet(desk.book, desk.frame(), sheet.name, options)));
  }

  function refresh(): void {
    deal();
    fill(record, createRecord(desk, sheet));
  }

  const form = h(
    'form',
    {
      class: 'ask',
      on: {
        submit: (event) => {
          event.preventDefault();
          deal();
        },
      },
    },
    h('p', {}, h('label', { for: 'paper-seed' }, 'Seed'), seed),
    h('p', {}, h('label', { for: 'paper-count' }, 'Problems'), count),
    h('button', { type: 'submit' }, 'Deal them'),
    ' ',
    h('button', { type: 'button', on: { click: printPaper } }, 'Print the practice sheet'),
  );
  refresh();
  return { element: h('div', {}, form, paper, record), cells: [], refresh };
}

/** The page prints the practice sheet alone, this once. */
function printPaper(): void {
  const { dataset } = document.documentElement;
  dataset.print = 'practice';
  addEventListener('afterprint', () => void delete dataset.print, { once: true });
  window.print();
}

function layOut(sheet: Sheet, { seed, problems }: PracticeSheet): readonly HTMLElement[] {
  const questions = problems.map((one) => h('li', {}, ...createQuestion(one)));
  const answers = problems.map(({ answer, within }) => h('li', {}, `${answer} (${within})`));
  return [
    h(
      'section',
      { 'aria-label': 'Problems' },
      h('h2', {}, `${sheet.title}: practice`),
      h('p', {}, `Seed ${seed}. Name: `, h('span', { class: 'blank-line' })),
      h('ol', { class: 'problems-list' }, ...questions),
    ),
    h(
      'section',
      { class: 'answer-key', 'aria-label': 'Answer key' },
      h('h2', {}, `${sheet.title}: answer key`),
      h('p', {}, `Seed ${seed}.`),
      h('ol', {}, ...answers),
    ),
  ];
}

function createQuestion({ title, question, numbers }: SheetProblem): readonly HTMLElement[] {
  const listed = numbers.flatMap(({ label, text }) => [h('dt', {}, label), h('dd', {}, text)]);
  return [
    h('p', {}, h('b', {}, title)),
    h('dl', { class: 'practice-numbers' }, ...listed),
    h('p', {}, question),
    h('p', {}, 'Answer: ', h('span', { class: 'blank-line' })),
  ];
}

const TOLD: Readonly<Record<string, string>> = {
  right: 'right',
  unit: 'right number, wrong unit',
  rounding: 'rounded too early',
  sign: 'wrong sign',
  wrong: 'wrong',
};

/** Every answer that was tried on this sheet: which numbers, what was typed, what it was, how long it took. */
function createRecord(desk: Desk, sheet: Sheet): HTMLElement {
  const attempts = Object.entries(own(desk.job().attempts, sheet.name) ?? {});
  const rows = attempts.flatMap(([question, tried]) =>
    tried.map((attempt) => {
      const practice = desk.book.practices.find(
        (each) => each.sheet === sheet.name && each.statement.title === question,
      );
      const mistake = practice?.statement.mistakes[attempt.mistake ?? -1]?.sentence;
      const told = attempt.told === 'mistake' ? (mistake ?? 'a usual mistake') : attempt.told;
      const cells = [`${attempt.seed}`, attempt.typed, TOLD[told] ?? told, `${attempt.seconds} s`];
      return h(
        'tr',
        {},
        h('th', { scope: 'row' }, question),
        ...cells.map((text) => h('td', {}, text)),
      );
    }),
  );
  if (rows.length === 0) {
    return h('p', {}, 'The instructor’s record: nobody has answered a question of this sheet yet.');
  }
  const heads = ['Question', 'Seed', 'Typed', 'What it was', 'Time'];
  const head = h('tr', {}, ...heads.map((word) => h('th', { scope: 'col' }, word)));
  const caption = h(
    'caption',
    {},
    'The instructor’s record. It is kept in the job and sent nowhere.',
  );
  const table = h('table', {}, caption, h('thead', {}, head), h('tbody', {}, ...rows));
  return createScrollBox('wide', 'The instructor’s record', table);
}
