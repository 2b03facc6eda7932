/** Small things that a browser remembers by name. */
export type SmallShelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/**
 * Such a shelf, also in a browser that refuses to hand out its own: there it holds nothing.
 *
 * @param open hands out the browser's own, or throws
 */
export function createShelf(open: () => SmallShelf): SmallShelf {
  function quietly<T>(act: (shelf: SmallShelf) => T, otherwise: T): T {
    try {
      return act(open());
    } catch {
      return otherwise;
    }
  }
  return {
    getItem: (name) => quietly((shelf) => shelf.getItem(name), null),
    setItem: (name, value) => quietly((shelf) => shelf.setItem(name, value), undefined),
    removeItem: (name) => quietly((shelf) => shelf.removeItem(name), undefined),
  };
}
