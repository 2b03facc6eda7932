import { expect, test, vi } from 'vitest';
import { h } from '../../src/page/element.ts';
import { createPaperSection } from '../../src/page/paper-section.ts';
import { createSheetView } from '../../src/page/sheet-view.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `# Bolts

\`\`\`given
width = 3 in "Width" from 1 in to 5 in
\`\`\`

\`\`\`stack twice "Twice" as in
+ width
+ width
\`\`\`

\`\`\`check
twice between 1 in and 9 in "Fits"
\`\`\`

\`\`\`chart "Twice over width"
twice over width from 1 in to 5 in
\`\`\`
`;

function lay(prefix = 'p-') {
  const { desk, sheet } = createTestDesk(SHEET);
  const section = createPaperSection(desk, sheet, createSheetView, prefix);
  section.element.style.width = '680px';
  document.body.replaceChildren(section.element);
  return section;
}

test('a sheet is settled when its chain, gauge and chart are drawn, as wide as the paper', async () => {
  const { element, settled } = lay();
  expect(await settled()).toBe(0);
  const places = [...element.querySelectorAll('.drawn, .plot')];
  expect(places).toHaveLength(3);
  for (const place of places) {
    const drawing = place.querySelector('svg');
    expect(drawing, place.className).not.toBeNull();
    expect(drawing!.getBoundingClientRect().right).toBeLessThanOrEqual(681);
  }
  expect(textOf(element)).toContain('6 in');
});

test('two sheets that are laid one after the other share no id', async () => {
  const first = lay('p0-');
  await first.settled();
  const kept = [...first.element.querySelectorAll('[id]')].map(({ id }) => id);
  const second = lay('p1-');
  await second.settled();
  const others = [...second.element.querySelectorAll('[id]')].map(({ id }) => id);
  expect(kept.length).toBeGreaterThan(0);
  expect(kept.filter((id) => others.includes(id))).toEqual([]);
});

test('once laid, a sheet is let go of', async () => {
  const { desk, sheet } = createTestDesk(SHEET);
  const dispose = vi.fn();
  const section = createPaperSection(desk, sheet, () => ({ nodes: [h('p')], dispose }), 'p-');
  document.body.replaceChildren(section.element);
  expect(await section.settled()).toBe(0);
  expect(dispose).toHaveBeenCalledOnce();
});

test('a drawing that never comes is counted, one in something shut is not waited for', async () => {
  const { desk, sheet } = createTestDesk(SHEET);
  const never = h('div', { class: 'drawn' });
  const shut = h('details', {}, h('div', { class: 'drawn' }));
  const section = createPaperSection(
    desk,
    sheet,
    () => ({ nodes: [never, shut], dispose: () => {} }),
    'p-',
  );
  section.element.style.width = '680px';
  document.body.replaceChildren(section.element);
  vi.stubGlobal('requestAnimationFrame', (act: () => void) => queueMicrotask(act));
  expect(await section.settled()).toBe(1);
  vi.unstubAllGlobals();
});
