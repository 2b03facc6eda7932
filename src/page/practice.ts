import type { LinkedPractice, Practice } from '../sheet/cell.ts';
import { drawProblem, type PracticeProblem } from '../sheet/practice/draw-problem.ts';
import { type Feedback, judgeAnswer } from '../sheet/practice/judge-answer.ts';
import { readSeed, showDealt } from '../sheet/practice/practice-sheet.ts';
import type { PracticeBlock, Sheet } from '../sheet/sheet.ts';
import type { Desk } from './desk.ts';
import { fill, h } from './element.ts';
import { createFrameDesk } from './frame-desk.ts';
import { createLazy } from './lazy.ts';
import type { View } from './view.ts';

/** A practice question: fresh numbers by seed, a typed answer, what it tells, then the working. */
export function createPractice(desk: Desk, sheet: Sheet, block: PracticeBlock): View {
  const practice = desk.book.practices.find(({ statement }) => statement === block.practice);
  if (practice === undefined) return emptyView(h('div'));
  if (practice.linked === undefined) {
    return emptyView(
      h('p', { class: 'trouble' }, `There is no question: ${practice.problem!.message}.`),
    );
  }
  return createQuestion(desk, sheet, practice, practice.linked);
}

function emptyView(element: HTMLElement): View {
  return { element, cells: [], refresh: () => {} };
}

function createQuestion(
  desk: Desk,
  sheet: Sheet,
  { statement }: Practice,
  linked: LinkedPractice,
): View {
  const id = `practice-${statement.place.line}`;
  const numbers = h('dl', { class: 'practice-numbers' });
  const answer = h('input', {
    id,
    type: 'text',
    inputmode: 'text',
    autocomplete: 'off',
    'aria-describedby': `${id}-told`,
  });
  const told = h('div', { id: `${id}-told`, class: 'told', role: 'status' });
  const seed = h('input', {
    id: `${id}-seed`,
    type: 'text',
    inputmode: 'numeric',
    autocomplete: 'off',
  });
  let problem: PracticeProblem | undefined;
  let began = 0;

  function deal(next: number): void {
    problem = drawProblem(desk.book, desk.frame(), linked, next);
    began = desk.now();
    seed.value = `${next}`;
    answer.value = '';
    fill(told);
    showNumbers();
  }

  function showNumbers(): void {
    if (problem === undefined) {
      fill(numbers, h('dt', {}, 'No numbers with an answer could be drawn.'));
      return;
    }
    fill(numbers, ...problem.numbers.flatMap(({ given, value }) => listNumber(desk, given, value)));
  }

  function judge(): void {
    if (problem === undefined) return;
    const asked = desk.book.cells[linked.asked]!;
    const feedback = judgeAnswer(answer.value, problem, linked, asked.kind!, asked.display.unit);
    if (feedback.type !== 'unreadable') {
      desk.recordAttempt(sheet.name, statement.title, {
        seed: problem.seed,
        typed: answer.value,
        told: feedback.type,
        ...(feedback.mistake === undefined ? {} : { mistake: feedback.mistake }),
        seconds: Math.round((desk.now() - began) / 1000),
      });
    }
    fill(told, ...tell(desk, problem, linked, feedback));
  }

  const form = h(
    'form',
    {
      class: 'practice-answer',
      on: { submit: instead(judge) },
    },
    h('label', { for: id }, statement.question),
    answer,
    h('button', { type: 'submit' }, 'Check the answer'),
  );
  const deck = h(
    'form',
    {
      class: 'practice-seed',
      on: { submit: instead(() => deal(readSeed(seed.value))) },
    },
    h('label', { for: `${id}-seed` }, 'Numbers of seed'),
    seed,
    h('button', { type: 'submit' }, 'Deal these'),
    h(
      'button',
      { type: 'button', on: { click: () => deal(readSeed(seed.value) + 1) } },
      'Fresh numbers',
    ),
  );
  deal(1);
  const element = h(
    'section',
    { class: 'block practice', 'aria-label': `Practice: ${statement.title}` },
    h('p', { class: 'practice-title' }, h('b', {}, 'Practice'), ` ${statement.title}`),
    numbers,
    form,
    told,
    deck,
  );
  return { element, cells: [], refresh: showNumbers };
}

/** Does this in place of what the browser would do with a form. */
function instead(act: () => void): (event: Event) => void {
  return (event) => {
    event.preventDefault();
    act();
  };
}

function listNumber(desk: Desk, given: number, value: number): readonly HTMLElement[] {
  const cell = desk.book.cells[given]!;
  return [h('dt', {}, cell.label), h('dd', {}, showDealt(value, cell, desk.system()))];
}

/** What the answer tells; after a sound attempt the working with these numbers, one click away. */
function tell(
  desk: Desk,
  problem: PracticeProblem,
  { asked }: LinkedPractice,
  { type, sentence }: Feedback,
): readonly HTMLElement[] {
  const words = h('p', { class: type === 'right' ? 'verdict passes' : 'verdict fails' }, sentence);
  if (type === 'unreadable') return [words];
  const cell = desk.book.cells[asked]!;
  const working = createLazy('The working with these numbers', async () => {
    const { createStepThrough } = await import('./step-through.ts');
    return createStepThrough(createFrameDesk(desk, problem.frame), cell);
  });
  working.element.open = type === 'right';
  return [words, working.element];
}
