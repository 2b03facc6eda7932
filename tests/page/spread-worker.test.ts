import { expect, test } from 'vitest';
import type { SimulationNews, SimulationOrder } from '../../src/page/spread-worker.ts';

const SOURCE =
  '# A\n```given\ngap = 3.00 ± 0.01 in\n```\n```work\ntwice = 2 * gap\neach = [1, 3] * gap\n```\n';

function order(changes: Partial<SimulationOrder>): Promise<readonly SimulationNews[]> {
  const worker = new Worker(new URL('../../src/page/spread-worker.ts', import.meta.url), {
    type: 'module',
  });
  const news: SimulationNews[] = [];
  return new Promise((resolve, reject) => {
    worker.addEventListener('error', reject);
    worker.addEventListener('message', ({ data }: MessageEvent<SimulationNews>) => {
      news.push(data);
      if (data.type !== 'done') return;
      worker.terminate();
      resolve(news);
    });
    const sheets = [{ file: '10-a.md', source: SOURCE }];
    worker.postMessage({ sheets, entries: [], result: 1, samples: 20_000, seed: 1, ...changes });
  });
}

const middle = (news: readonly SimulationNews[]) => {
  const last = news.at(-1)!;
  return last.type === 'done'
    ? (last.distribution.shortest[0] + last.distribution.shortest[1]) / 2
    : Number.NaN;
};

test('progress goes up to the end, and the same seed gives the same numbers', async () => {
  const [one, other] = [await order({}), await order({})];
  const shares = one.flatMap((each) => (each.type === 'progress' ? [each.share] : []));
  expect(shares).toEqual(shares.toSorted((a, b) => a - b));
  expect(one.at(-1)).toEqual(other.at(-1));
  expect(middle(one) / 0.0254).toBeCloseTo(6, 2);
});

test('what the person typed is taken, not the sheet’s example', async () => {
  const news = await order({ entries: [[0, { text: '5.00 ± 0.01 in' }]] });
  expect(middle(news) / 0.0254).toBeCloseTo(10, 2);
});

test('of a list the number that was asked for is drawn', async () => {
  expect(middle(await order({ result: 2, element: 1 })) / 0.0254).toBeCloseTo(9, 2);
});
