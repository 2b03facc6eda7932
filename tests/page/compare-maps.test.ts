import { expect, test } from 'vitest';
import { openProposal } from './made-compare.ts';
import { textOf } from './test-desk.ts';

const MAP = `
\`\`\`given
tyre = 2 m "Once round the tyre" from 1 m to 3 m
grip = 1 "What is not lost to slip"
\`\`\`

\`\`\`work
speed = grip * tyre * 1000 / 1 min / axle "Road speed at 1000 rpm" as km/h to 0.1
\`\`\`

\`\`\`chart "Axle and tyre"
speed as km/h over axle from 2 to 5 and tyre from 1.5 m to 2.5 m
\`\`\`
`;
const openMaps = () => openProposal('3.73', MAP);

test('maps stand beside one another, each with its column’s name, its point and its sentence', async () => {
  const { element, settled } = openMaps();
  await settled(() => expect(element.querySelectorAll('.maps svg')).toHaveLength(2));
  const maps = [...element.querySelectorAll('.maps > div')].map(textOf);
  expect(maps[0]).toMatch(/^As it is.*The job stands at 3\.25 and 6\.562 ft, with 22\.94 mph/);
  expect(maps[1]).toMatch(/^Proposal.*The job stands at 3\.73 and 6\.562 ft, with 19\.99 mph/);
  const ids = [...element.querySelectorAll('.maps [id]')].map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

test('no map is wider than its place', async () => {
  const { element, settled } = openMaps();
  await settled(() => expect(element.querySelectorAll('.maps svg')).toHaveLength(2));
  for (const map of element.querySelectorAll('.maps > div')) {
    const room = map.getBoundingClientRect().right;
    expect(map.querySelector('svg')!.getBoundingClientRect().right).toBeLessThanOrEqual(room + 1);
  }
});

test('where none can be worked it says so', async () => {
  const { element, settled, desk, given } = openMaps();
  await settled(() => expect(element.querySelectorAll('.maps svg')).toHaveLength(2));
  desk.enter(given('grip'), { text: '0 / 0' });
  await settled(() => expect(textOf(element)).toMatch(/There is no value to draw\.Axle and tyre/));
  expect(element.querySelector('.maps')).toBeNull();
});

test('their numbers are a table each, one click away', async () => {
  const { element, settled } = openMaps();
  await settled(() => expect(element.querySelectorAll('.maps svg')).toHaveLength(2));
  const figure = element.querySelector('.maps')!.closest('figure')!;
  figure.querySelector('details')!.open = true;
  await settled(() => expect(figure.querySelectorAll('table')).toHaveLength(2));
});
