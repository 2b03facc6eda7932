import { expect, test, vi } from 'vitest';
import { createNewerVersion } from '../../src/page/newer-version.ts';

function make(...saves: boolean[]) {
  const newer = createNewerVersion({ save: async () => saves.shift()! });
  const use = vi.fn();
  newer.offer(use);
  const press = (words: string) => {
    const all = [...newer.element.querySelectorAll('button')];
    all.find(({ textContent }) => textContent === words)!.click();
  };
  return { ...newer, use, press };
}

test('it is put in once the job is saved', async () => {
  const { press, use } = make(true);
  expect(use).not.toHaveBeenCalled();
  press('Put it in');
  await vi.waitFor(() => expect(use).toHaveBeenCalledOnce());
});

test('it is never put in over work that is not saved', async () => {
  const { press, use, element } = make(false, true);
  press('Put it in');
  await vi.waitFor(() => expect(element.textContent).toMatch(/your job is not saved/));
  expect(use).not.toHaveBeenCalled();
  press('Try again');
  await vi.waitFor(() => expect(use).toHaveBeenCalledOnce());
});

test('later is later', () => {
  const { press, use, element } = make();
  press('Later');
  expect(element.textContent).toBe('');
  expect(use).not.toHaveBeenCalled();
});
