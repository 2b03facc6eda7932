import { afterEach, expect, test, vi } from 'vitest';
import { formatLink } from '../../src/job/link.ts';
import { formatJobFile } from '../../src/job/read-job.ts';
import { NEW_JOB, withEntry, withForeignSheet } from '../../src/job/record.ts';
import { formatSheetLink } from '../../src/job/sheet-link.ts';
import { letGoOfSheet, takeInFile, takeInLink, takeInText } from '../../src/page/take-in.ts';
import { makeBrowser } from './made-session.ts';

afterEach(() => document.body.replaceChildren());

const SHEET =
  '# Mine\n\n```given\nheight = 2 in "Height"\n```\n\n```work\nhalf = height / 2 as in\n```\n';
const JOB = withEntry({ ...NEW_JOB, title: 'From outside' }, '10-bolts', 'width', {
  text: '9',
  unit: 'in',
});

async function open() {
  const { openWindow, openStore } = makeBrowser();
  const opened = await openWindow();
  const desk = () => opened.session.desk();
  const file = (text: string, name: string) =>
    takeInFile(opened.session, desk(), new File([text], name));
  return { ...opened, openStore, desk, file };
}

test('a job comes by file, by link and by paste, each time as a copy', async () => {
  const { session, file, title, alert, field, openStore } = await open();
  await file(formatJobFile(JOB), 'a.job.json');
  expect(alert()).toMatch(/^Opened from a file as a copy: "From outside"/);
  await takeInLink(session, session.desk(), formatLink(JOB));
  expect(alert()).toMatch(/^Opened from a link as a copy/);
  await takeInText(session, session.desk(), formatJobFile(JOB));
  expect(alert()).toMatch(/^Opened from what was pasted as a copy/);
  await takeInText(session, session.desk(), ` https://example.org/app/${formatLink(JOB)} `);
  expect([title(), field().value]).toEqual(['From outside', '9']);
  expect(await openStore().list()).toHaveLength(4);
});

test.each([
  [
    'a link that was cut',
    (text: string) => takeInLinkOf(text),
    /cut off on its way.*Nothing was changed here/,
  ],
  ['words', () => 'hello', /This is no job of Layshaft/],
  ['a newer job', () => '{"app":"layshaft","schema":9}', /version 9.*left as it is/],
])('%s is refused and changes nothing', async (_, make, sentence) => {
  const { session, title, alert, openStore } = await open();
  await takeInText(session, session.desk(), make(formatLink(JOB)));
  expect(alert()).toMatch(sentence);
  expect(title()).toBe('The demo');
  expect(await openStore().list()).toEqual([]);
});

function takeInLinkOf(link: string): string {
  return link.slice(0, -5);
}

test('a damaged file opens as far as it goes, and says what is lost', async () => {
  const { file, alert, title } = await open();
  await file(formatJobFile(JOB).replace('"9"', '9'), 'a.json');
  expect(title()).toBe('From outside');
  expect(alert()).toMatch(/not everything could be read.*entries, 10-bolts, width: cannot be read/);
});

test('a sheet of one’s own works beside the others, is marked with its hash, and goes with the job', async () => {
  const { file, root, desk, session } = await open();
  await file(SHEET, '21 mine.md');
  await vi.waitFor(() => expect(root.querySelector('h1')?.textContent).toContain('Mine'));
  const { version } = desk().job().foreign['21-mine']!;
  expect(root.querySelector('.foreign')?.textContent).toContain(version);
  expect(root.querySelector('#half strong')?.textContent).toMatch(/^1/);
  const copy = desk().job();
  await session.openDemo();
  expect(desk().book.sheets).toHaveLength(1);
  await session.openCopy(copy, []);
  expect(desk().book.sheets.map(({ name }) => name)).toEqual(['10-bolts', '21-mine']);
});

test('a sheet comes by link into the job that is open, which says so and keeps its entries', async () => {
  const { session, type, title, alert, desk, root, openStore } = await open();
  type('5');
  await takeInLink(session, desk(), formatSheetLink({ name: '21-mine', text: SHEET }));
  expect(root.querySelector('h1')?.textContent).toContain('Mine');
  expect(root.querySelector('.foreign')?.textContent).toContain(
    desk().job().foreign['21-mine']!.version,
  );
  expect(alert()).toBe(
    'The sheet 21-mine was taken into the job "The demo". Undo takes it out again.',
  );
  expect(title()).toBe('The demo');
  expect(desk().job().entries['10-bolts']?.width?.text).toBe('5');
  expect(await openStore().list()).toHaveLength(1);
});

test('a link to a sheet may be pasted as well', async () => {
  const { session, desk } = await open();
  const link = formatSheetLink({ name: '21-mine', text: SHEET });
  await takeInText(session, desk(), ` https://example.org/app/${link} `);
  expect(Object.keys(desk().job().foreign)).toEqual(['21-mine']);
});

test.each([
  ['cut', (link: string) => link.slice(0, -5), /cut off on its way.*Nothing was changed here/],
  ['changed', (link: string) => `${link.slice(0, -5)}xxxxx`, /its sheet cannot be trusted/],
])('a link to a sheet that was %s takes nothing in', async (_, spoil, sentence) => {
  const { session, desk, alert } = await open();
  const before = desk().job();
  await takeInLink(session, desk(), spoil(formatSheetLink({ name: '21-mine', text: SHEET })));
  expect(alert()).toMatch(sentence);
  expect(desk().job()).toBe(before);
});

test('undo takes the sheet out again, and redo brings it back', async () => {
  const { session, desk, root } = await open();
  const names = () => desk().book.sheets.map(({ name }) => name);
  await takeInLink(session, desk(), formatSheetLink({ name: '21-mine', text: SHEET }));
  desk().undo();
  await vi.waitFor(() => expect(names()).toEqual(['10-bolts']));
  expect(root.querySelector('.route')?.textContent).not.toContain('Mine');
  desk().redo();
  await vi.waitFor(() => expect(names()).toEqual(['10-bolts', '21-mine']));
});

test('the same sheet once more changes nothing; another text under its name is told of', async () => {
  const { session, desk, alert, root } = await open();
  const take = (text: string) =>
    takeInLink(session, desk(), formatSheetLink({ name: '21-mine', text }));
  await take(SHEET);
  const before = desk().history();
  await take(SHEET);
  expect(desk().history()).toBe(before);
  await take(SHEET.replace('# Mine', '# Ours'));
  expect(alert()).toMatch(/in place of its text before\. Undo brings that back\.$/);
  expect(root.querySelector('h1')?.textContent).toContain('Ours');
  desk().undo();
  await vi.waitFor(() => expect(root.querySelector('h1')?.textContent).toContain('Mine'));
});

test('a sheet from outside never takes the place of one of the house', async () => {
  const { file, desk } = await open();
  await file(SHEET, '10-bolts.md');
  await file(SHEET, 'jobs.md');
  expect(Object.keys(desk().job().foreign).sort()).toEqual(['10-bolts-2', 'jobs-2']);
  expect(desk().book.sheets[0]?.title).toBe('Bolts');
});

test('what was entered on a sheet that was let go of stays in the job', async () => {
  const { file, desk, session, root } = await open();
  await file(SHEET, '21-mine.md');
  const field = root.querySelector<HTMLInputElement>('#height')!;
  field.value = '6';
  field.dispatchEvent(new FocusEvent('blur'));
  await letGoOfSheet(session, desk(), '21-mine');
  expect(desk().job().foreign).toEqual({});
  expect(desk().job().entries['21-mine']?.height?.text).toBe('6');
});

test('a job that lies about the version of a sheet it brings is found out', async () => {
  const { session, desk } = await open();
  const lying = withForeignSheet(JOB, '21-mine', { version: 'trust me', text: SHEET });
  await takeInText(session, session.desk(), formatJobFile(lying));
  expect(desk().job().foreign['21-mine']?.version).toMatch(/^[0-9a-f]{16}$/);
});

test('a sheet that is too long is refused in a sentence', async () => {
  const { file, alert } = await open();
  await file('x'.repeat(1_000_001), 'long.md');
  expect(alert()).toMatch(/^long\.md has 1000001 characters/);
});

test('a sheet from outside runs nothing, asks for nothing and does not leave its frame', async () => {
  const { file, root } = await open();
  await file(
    '# Bad\n\n<script>window.hit = 1</script>\n\n<img src="https://example.org/x.png" onerror="window.hit = 1">\n\n[go](javascript:window.hit=1)\n\n<iframe src="https://example.org"></iframe>\n',
    'bad.md',
  );
  await vi.waitFor(() => expect(root.querySelector('h1')?.textContent).toContain('Bad'));
  expect(root.querySelectorAll('script, img, iframe, [href^=javascript]')).toHaveLength(0);
  expect('hit' in window).toBe(false);
});
