import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isLink } from '../../src/job/link-form.ts';
import { packLink } from '../../src/job/packed-link.ts';
import { formatSheetLink, parseSheetLink } from '../../src/job/sheet-link.ts';

const SHEET = {
  name: '21-mine',
  text: '# Mine\r\n\n```given\nheight = 2 in "Height"\n```\n\n```work\nhalf = height / 2 as in\n```\n',
};

test('a sheet comes back from its link letter by letter', () => {
  expect(parseSheetLink(formatSheetLink(SHEET))).toEqual({ ok: true, sheet: SHEET });
});

test('any sheet does', () => {
  const word = fc.string({ unit: 'binary', maxLength: 200 });
  fc.assert(
    fc.property(fc.record({ name: word, text: word }), (sheet) => {
      expect(parseSheetLink(formatSheetLink(sheet))).toEqual({ ok: true, sheet });
    }),
  );
});

test('a sheet of a few lines is a short link', () => {
  expect(formatSheetLink(SHEET).length).toBeLessThan(200);
});

test('a link cut at any length says that it was cut', () => {
  const link = formatSheetLink(SHEET);
  for (let length = 2; length < link.length; length += 1) {
    const cut = link.slice(0, length);
    expect(isLink(cut)).toBe(true);
    expect(parseSheetLink(cut)).toEqual({
      ok: false,
      message: expect.stringMatching(/^This link was cut off on its way.* as a file$/),
    });
  }
});

test('a link with any letter changed is refused', () => {
  const link = formatSheetLink(SHEET);
  for (let at = '#sheet='.length; at < link.length; at += 1) {
    const other = link[at] === 'x' ? 'y' : 'x';
    const reading = parseSheetLink(link.slice(0, at) + other + link.slice(at + 1));
    expect(reading).toMatchObject({ ok: false, message: expect.stringMatching(/^This link/) });
  }
});

test('a link of a newer form is refused as such', () => {
  expect(parseSheetLink('#sheet=2.a.b.c')).toEqual({
    ok: false,
    message: expect.stringMatching(/made by a newer Layshaft \(form 2\).*the sheet as a file$/),
  });
});

test.each([
  ['no JSON', '# Mine'],
  ['a list', '[]'],
  ['a sheet without its text', '{"name":"21-mine"}'],
  ['a sheet whose text is a number', '{"name":"21-mine","text":3}'],
])('a sound link around %s is refused', (_, text) => {
  expect(parseSheetLink(packLink('sheet', text))).toEqual({
    ok: false,
    message: expect.stringMatching(/^This link does not unpack to a sheet/),
  });
});
