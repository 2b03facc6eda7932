import { expect, test } from 'vitest';
import { entryIn, NEW_JOB, withEntry, withSystem } from '../../src/job/record.ts';
import { createBlankJob, createExampleJob, createStartOver } from '../../src/page/start-over.ts';
import { createTestDesk } from './test-desk.ts';

const SHEET = `
\`\`\`table sets
set,ratios
Wide,"[3, 2]"
\`\`\`

\`\`\`given
width = 3 in "Width"
factor = 3.05 "Factor" source "a book"
gears = pick "Wide" from sets.ratios "Gears"
note = "A. N. Other" "Fitted by"
open = blank in
\`\`\`
`;
const { desk } = createTestDesk(SHEET);
const metric = withSystem(withEntry(NEW_JOB, '10-sheet', 'width', { text: '4' }), 'metric');

test('a blank job leaves open what is measured', () => {
  const blank = createBlankJob(desk.book, metric);
  expect(entryIn(blank, '10-sheet', 'width')).toEqual({ text: '' });
  expect(entryIn(blank, '10-sheet', 'note')).toEqual({ text: '' });
});

test('figures with a source, picks and units stay', () => {
  const blank = createBlankJob(desk.book, metric);
  expect(entryIn(blank, '10-sheet', 'factor')).toBeUndefined();
  expect(entryIn(blank, '10-sheet', 'gears')).toBeUndefined();
  expect(blank.system).toBe('metric');
});

test('the worked example has nothing typed in it', () => {
  expect(createExampleJob(metric)).toEqual({ ...NEW_JOB, system: 'metric' });
});

test('the buttons say what they do', () => {
  const pressed: string[] = [];
  const element = createStartOver({
    startBlank: () => pressed.push('blank'),
    startFromExample: () => pressed.push('example'),
  });
  for (const button of element.querySelectorAll('button')) button.click();
  expect(pressed).toEqual(['blank', 'example']);
});
