import { expect, test } from 'vitest';
import { createHistory, record, undo } from '../../src/job/history.ts';
import { NEW_JOB, withSystem } from '../../src/job/record.ts';
import { createHeader } from '../../src/page/header.ts';
import { textOf } from './test-desk.ts';

const start = createHistory(NEW_JOB);
const changed = record(start, 'units to metric', withSystem(NEW_JOB, 'metric'));

function create() {
  const pressed: string[] = [];
  const header = createHeader({
    home: '#/20-gearing',
    undo: () => pressed.push('undo'),
    redo: () => pressed.push('redo'),
  });
  const [undoButton, redoButton] = header.element.querySelectorAll('button');
  return { header, pressed, undoButton: undoButton!, redoButton: redoButton! };
}

test('undo and redo tell what they would do', () => {
  const { header, undoButton, redoButton } = create();
  header.show(changed);
  expect(undoButton.ariaLabel).toBe('Undo: units to metric');
  header.show(undo(changed));
  expect(redoButton.ariaLabel).toBe('Redo: units to metric');
});

test('with nothing to undo the button says so and does nothing', () => {
  const { header, pressed, undoButton } = create();
  header.show(start);
  undoButton.click();
  expect(undoButton.ariaLabel).toBe('Undo: nothing to undo');
  expect(pressed).toEqual([]);
  header.show(changed);
  undoButton.click();
  expect(pressed).toEqual(['undo']);
});

test('when it was saved stands in words', () => {
  const { header } = create();
  header.showSaved({ state: 'saved', at: new Date('2026-03-14T14:02:00Z') });
  expect(textOf(header.element.querySelector('.saved'))).toMatch(/^Saved in this browser \d\d:02$/);
  header.showSaved({ state: 'failed', trouble: 'full' });
  expect(textOf(header.element.querySelector('.saved'))).toBe('Not saved');
});

test('the job has its title', () => {
  const { header } = create();
  header.show(start);
  expect(textOf(header.element.querySelector('.job-title'))).toBe(NEW_JOB.title);
});
