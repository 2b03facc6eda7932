/** A stand-in for a tab: it enters a number every few milliseconds until it is killed in mid-sentence. */
import { openDatabase } from '../../src/job/database.ts';
import { createHistory, type History, record } from '../../src/job/history.ts';
import { createKeeper } from '../../src/job/keeper.ts';
import { NEW_JOB, withEntry } from '../../src/job/record.ts';
import { createStore } from '../../src/job/store.ts';
import { createSaver } from '../../src/page/saver.ts';
import { makeShelf } from '../job/made-shelf.ts';

self.addEventListener('message', ({ data }: MessageEvent<{ name: string; id: string }>) => {
  const store = createStore(
    (onGone) => openDatabase(onGone, data.name),
    makeShelf(),
    () => new Date(),
  );
  let history: History = createHistory(NEW_JOB);
  const start = { id: data.id, revision: 0, job: history.job };
  const keeper = createKeeper(
    store,
    start,
    () => new Date(),
    () => {},
  );
  const saver = createSaver({ history: () => history, save: keeper.save, tell: () => {} });
  let count = 0;

  function type(): void {
    count += 1;
    const job = withEntry(history.job, '20-gearing', 'redline', { text: String(count) });
    history = record(history, `to ${count}`, job);
    saver.touch();
    self.postMessage({ count, at: Date.now() });
    setTimeout(type, Math.random() * 60);
  }
  type();
});
