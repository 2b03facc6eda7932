import type { Cell } from '../sheet/cell.ts';
import type { Distribution } from '../sheet/spread/distribution.ts';
import type { SpreadWriting } from '../sheet/spread/spread-words.ts';
import type { Desk } from './desk.ts';
import { createDrawn } from './drawn.ts';
import { fill, h } from './element.ts';
import { loadHistogram } from './load-drawings.ts';

const SAMPLES = 100_000;
const SEED = 1;

/**
 * The distribution of a result, simulated in a worker on demand: the page stays awake meanwhile.
 *
 * @param element which number of a list, from 0
 */
export function createSimulation(
  desk: Desk,
  cell: Cell,
  writing: SpreadWriting,
  element = 0,
): HTMLElement {
  const told = h('p', { role: 'status' });
  const picture = h('div');
  const progress = h('progress', { max: 1, value: 0, hidden: true, 'aria-label': 'Simulation' });
  const start = h('button', { type: 'button', on: { click: run } }, 'Simulate it 100 000 times');
  const stop = h(
    'button',
    { type: 'button', hidden: true, on: { click: () => cancel?.() } },
    'Stop',
  );
  let cancel: (() => void) | undefined;

  function run(): void {
    setBusy(true);
    fill(told);
    cancel = desk.simulate(
      cell.index,
      { samples: SAMPLES, seed: SEED, element },
      {
        onProgress: (share) => {
          progress.value = share;
        },
        onDone: (distribution) => {
          setBusy(false);
          show(distribution);
        },
        onStopped: () => {
          setBusy(false);
          fill(told, 'Stopped.');
        },
      },
    );
  }

  function setBusy(busy: boolean): void {
    progress.hidden = !busy;
    stop.hidden = !busy;
    start.hidden = busy;
    progress.value = 0;
  }

  function show(distribution: Distribution): void {
    const [from, to] = distribution.shortest;
    const missing =
      distribution.missing === 0 ? '' : ` ${distribution.missing} draws had no result.`;
    fill(
      told,
      `95 % of ${distribution.samples} draws lie between ${writing.show(from)} and ${writing.show(to)}; standard uncertainty ${writing.show(distribution.u)}, seed ${SEED}.${missing}`,
    );
    const drawn = createDrawn('drawn', loadHistogram, (drawHistogram, width) =>
      drawHistogram(
        { title: cell.label, bins: distribution.bins, range: [from, to], show: writing.show },
        { document, width, idPrefix: `simulated-${cell.index}` },
      ),
    );
    fill(picture, drawn.element);
  }

  return h(
    'div',
    { class: 'simulation' },
    h('div', { class: 'buttons' }, start, stop, progress),
    told,
    picture,
  );
}
