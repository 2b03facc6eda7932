import { expect, test } from 'vitest';
import { decodeEntities } from '../../src/page/entities.ts';

test.each([
  ['M8 &times; 1.25', 'M8 × 1.25'],
  ['&lt;script&gt;', '<script>'],
  ['&#176;C &#xB1;', '°C ±'],
  ['a &amp;amp; b', 'a &amp; b'],
  ['A & B', 'A & B'],
  ['&nosuchname;', '&nosuchname;'],
  ['plain', 'plain'],
])('%s is read as %s', (text, read) => {
  expect(decodeEntities(text)).toBe(read);
});
