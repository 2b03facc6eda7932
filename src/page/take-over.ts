import { freshId } from '../job/fresh-id.ts';
import { createHistory } from '../job/history.ts';
import {
  clearOldShelf,
  OLD_KEY,
  type OldText,
  readOldShelf,
  type Shelf,
} from '../job/old-shelf.ts';
import { parseJob } from '../job/read-job.ts';
import type { JobStore } from '../job/store.ts';

/** Takes over what earlier versions kept elsewhere in the browser. It is taken away there once it is safe. */
export async function takeOverOldShelf(store: JobStore, open: () => Shelf): Promise<void> {
  let shelf: Shelf;
  try {
    shelf = open();
  } catch {
    return;
  }
  for (const old of readOldShelf(shelf)) {
    if (await takeOver(store, old)) clearOldShelf(shelf, old.key);
  }
}

/** True once it is kept here. */
async function takeOver(store: JobStore, { key, text }: OldText): Promise<boolean> {
  const reading = key === OLD_KEY ? parseJob(text) : undefined;
  if (reading?.ok !== true || reading.issues.length > 0) {
    return store.keepAside(
      text,
      reading?.ok === false ? reading.message : 'Kept by an earlier version',
    );
  }
  const id = freshId();
  const saving = await store.save(id, 0, createHistory(reading.job));
  if (saving.state === 'saved') await store.set('open', id);
  return saving.state === 'saved';
}
