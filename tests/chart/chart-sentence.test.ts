import { expect, test } from 'vitest';
import { chartSentence } from '../../src/chart/chart-sentence.ts';
import { CHARTS, chart } from '../support/chart-cases.ts';

const say = (data: Parameters<typeof chartSentence>[0]) =>
  chartSentence(data).replaceAll('\u00a0', ' ');

test('a chart of many lines', () => {
  expect(say(CHARTS[0]![1])).toBe(
    'Engine speed over road speed from 0 mph to 150 mph, a line each for 1st, 2nd, 3rd, 4th, 5th and 6th. ' +
      'Cruise, with road speed at 70 mph: 1st 9450 rpm, 2nd 6300 rpm, 3rd 4410 rpm, 4th 3150 rpm, 5th 2520 rpm, 6th 1890 rpm. ' +
      'Every line rises from left to right. ' +
      'Redline, 5500 rpm, is met by 1st at 40.7 mph, 2nd at 61.1 mph, 3rd at 87.3 mph and 4th at 122.2 mph; 5th and 6th stay below it.',
  );
});

test('a chart of one line in a window', () => {
  expect(say(CHARTS[2]![1])).toBe(
    'Gap when worn over disc wear from 0 in to 0.12 in. ' +
      'With disc wear at 0.04 in, gap when worn is 0.025 in. ' +
      'It falls from 0.165 in to −0.255 in. ' +
      'At Disc worn out, 0.08 in, gap when worn is −0.115 in. ' +
      'It lies inside Window, 0.125 in to 0.2 in, from 0 in to 0.0114 in.',
  );
});

test('a name with a comma in it is closed by another', () => {
  const data = chart({ now: undefined });
  const named = { ...data, y: { ...data.y, label: 'Height, of the tip' } };
  expect(say(named)).toMatch(/^Height, of the tip, over time from 0 s to 10 s\./);
});

test('a chart without a present point leaves it out', () => {
  expect(say(chart({}))).toBe('Height over time from 0 s to 10 s. It rises from 0 mm to 10 mm.');
});

test('a present point where no line has a value is left out', () => {
  expect(say(chart({ now: 3 }))).not.toContain('With');
});

test.each(CHARTS)('%s: the sentences are whole', (_, data) => {
  expect(say(data)).toMatch(/^\S.*\.$/);
  expect(say(data)).not.toMatch(/NaN|undefined|Infinity|,,|\.\.|: [.;]/);
});
