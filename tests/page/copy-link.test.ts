import { afterEach, expect, test, vi } from 'vitest';
import { addressOf, copyLink, createLinkField, describeTooLong } from '../../src/page/copy-link.ts';

afterEach(() => {
  vi.restoreAllMocks();
  document.body.replaceChildren();
});

test('a link is the address of this page, with what is to be opened behind it', () => {
  const address = addressOf('#job=1');
  expect(address).toMatch(/^http[^#]+#job=1$/);
  expect(address).not.toContain('##');
});

test('a link of 2,000 characters is offered, a longer one is told of', () => {
  expect(describeTooLong('x'.repeat(2000), 'this sheet')).toBeUndefined();
  expect(describeTooLong('x'.repeat(2001), 'this sheet')).toBe(
    'As a link this sheet would have 2,001 characters. Links of more than 2,000 are cut on the way: hand over the file.',
  );
});

test('a link is copied, and that is said', async () => {
  const write = vi.spyOn(navigator.clipboard, 'writeText').mockResolvedValue();
  const field = createLinkField('a', 'https://example.org/#job=1');
  expect(await copyLink(field)).toBe('The link is copied.');
  expect(write).toHaveBeenCalledWith('https://example.org/#job=1');
});

test('where the browser does not let the page copy, the link is marked', async () => {
  vi.spyOn(navigator.clipboard, 'writeText').mockRejectedValue(new DOMException('denied'));
  const field = createLinkField('a', '#job=1');
  document.body.append(field);
  expect(await copyLink(field)).toMatch(/does not let the page copy: the link is marked/);
  expect([field.selectionStart, field.selectionEnd]).toEqual([0, 6]);
});
