import { expect, test } from 'vitest';
import { listReadings } from '../../src/page/paper-readings.ts';
import { openNotebooks } from '../support/notebooks.ts';

const book = openNotebooks();

test.each(book.sheets.map((sheet) => [sheet.name, sheet] as const))(
  'each given of %s that says how it is read is on its measuring sheet, once',
  (name, sheet) => {
    const cells = book.cells.filter((cell) => cell.role === 'given' && cell.sheet === name);
    const told = cells.filter((cell) => cell.role === 'given' && cell.statement.how !== undefined);
    const listed = listReadings(book, sheet).flatMap(({ readings }) => readings);
    expect(listed.map((cell) => cell.name).sort()).toEqual(told.map((cell) => cell.name).sort());
  },
);
