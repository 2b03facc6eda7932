import { fill, h } from './element.ts';
import type { UseNewer } from './install.ts';

export interface NewerHost {
  /** Saves what is not saved; false where that failed. */
  save(): Promise<boolean>;
}

/** Offers a newer version of the app. It is never put in over work that is not saved. */
export function createNewerVersion(host: NewerHost): {
  readonly element: HTMLElement;
  offer(use: UseNewer): void;
} {
  const element = h('div', { class: 'newer', role: 'status' });
  const button = (words: string, act: () => void): HTMLElement =>
    h('button', { type: 'button', on: { click: act } }, words);

  async function putIn(use: UseNewer): Promise<void> {
    if (await host.save()) use();
    else {
      fill(
        element,
        h('p', {}, 'The newer version was not put in: your job is not saved. Download it first.'),
        button('Try again', () => void putIn(use)),
      );
    }
  }

  return {
    element,
    offer(use) {
      fill(
        element,
        h('p', {}, 'A newer Layshaft is ready. Your job is saved before it is put in.'),
        button('Put it in', () => void putIn(use)),
        button('Later', () => fill(element)),
      );
    },
  };
}
