/** The part of `localStorage` that is needed to clear it of jobs. */
export interface Shelf {
  readonly length: number;
  key(index: number): string | null;
  getItem(key: string): string | null;
  removeItem(key: string): void;
}

/** Where the one job stood before there were several. */
export const OLD_KEY = 'layshaft/job/1';

export interface OldText {
  readonly key: string;
  readonly text: string;
}

/** What earlier versions left on the shelf: the job itself first, then what it could not read. */
export function readOldShelf(shelf: Shelf): readonly OldText[] {
  try {
    const keys = Array.from({ length: shelf.length }, (_, i) => shelf.key(i) ?? '');
    const own = keys.filter((key) => key === OLD_KEY || key.startsWith(`${OLD_KEY}/`)).sort();
    return own.flatMap((key) => {
      const text = shelf.getItem(key);
      return text === null ? [] : [{ key, text }];
    });
  } catch {
    return [];
  }
}

/** Takes away what has been taken over. */
export function clearOldShelf(shelf: Shelf, key: string): void {
  try {
    shelf.removeItem(key);
  } catch {
    // It stays, and is taken over again the next time: twice is better than never.
  }
}
