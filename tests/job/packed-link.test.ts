import { deflateSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { inferLinkKind, type LinkKind } from '../../src/job/link-form.ts';
import { packLink, refuseLink, unpackLink } from '../../src/job/packed-link.ts';
import { sha256 } from '../../src/job/sha256.ts';

const KINDS: readonly LinkKind[] = ['job', 'sheet'];
const TEXT = 'Finger height 3.212 in, "so" it was – 80 °C\n'.repeat(3);

/** A link around any payload, sound as far as its letters go. */
function wrap(kind: LinkKind, payload: string): string {
  return `#${kind}=1.${payload.length.toString(36)}.${sha256(payload).slice(0, 8)}.${payload}`;
}

describe.each(KINDS)('a link to a %s', (kind) => {
  const link = packLink(kind, TEXT);

  test('brings its text back, in letters that every address takes', () => {
    expect(link).toMatch(/^#[\w=.-]+$/);
    expect(unpackLink(kind, link)).toEqual({ ok: true, text: TEXT });
  });

  test('that was cut at any length says that it was cut', () => {
    for (let length = 2; length < link.length; length += 1) {
      const cut = link.slice(0, length);
      expect(inferLinkKind(cut)).toBe(kind);
      expect(unpackLink(kind, cut)).toEqual({
        ok: false,
        message: expect.stringMatching(/^This link was cut off on its way/),
      });
    }
  });

  test('says how much of it is there', () => {
    const payload = link.split('.')[3]!;
    const told = `${payload.length - 4} of ${payload.length} letters of its ${kind} are there`;
    expect(unpackLink(kind, link.slice(0, -4))).toMatchObject({
      message: `This link was cut off on its way. ${told}. Ask for it again, or for the ${kind} as a file`,
    });
  });

  test('with any letter changed is refused', () => {
    for (let at = kind.length + 2; at < link.length; at += 1) {
      const other = link[at] === 'x' ? 'y' : 'x';
      const unpacked = unpackLink(kind, link.slice(0, at) + other + link.slice(at + 1));
      expect(unpacked).toMatchObject({ ok: false, message: expect.stringMatching(/^This link/) });
    }
  });

  test('of a newer form is refused as such', () => {
    expect(unpackLink(kind, `#${kind}=2.a.b.c`)).toEqual(
      refuseLink(kind, 'This link was made by a newer Layshaft (form 2)'),
    );
  });

  test.each([
    ['no packed data', 'AAAAAAAA'],
    ['nothing', ''],
    ['letters that are none', '!!!!'],
  ])('around %s is refused', (_, payload) => {
    expect(unpackLink(kind, wrap(kind, payload))).toMatchObject({ ok: false });
  });

  test('that unpacks without end is stopped', () => {
    const bomb = deflateSync(new Uint8Array(60_000_000), { level: 9 });
    const payload = Buffer.from(bomb).toString('base64url');
    expect(unpackLink(kind, wrap(kind, payload))).toEqual(
      refuseLink(kind, `This link does not unpack to a ${kind}`),
    );
  });
});
