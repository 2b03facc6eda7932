export interface Keys {
  undo(): void;
  redo(): void;
}

/**
 * Undo and redo by keyboard, for the whole page. In a text field the keys belong to the field,
 * which undoes what is being typed.
 *
 * @returns takes the listener away again
 */
export function listenForKeys(target: EventTarget, keys: Keys): () => void {
  const hear = (event: Event): void => {
    const key = nameKey(event as KeyboardEvent);
    if (key === undefined || isTyping(event.target)) return;
    event.preventDefault();
    keys[key]();
  };
  target.addEventListener('keydown', hear);
  return () => target.removeEventListener('keydown', hear);
}

function nameKey(event: KeyboardEvent): keyof Keys | undefined {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return undefined;
  const key = event.key.toLowerCase();
  if (key === 'z') return event.shiftKey ? 'redo' : 'undo';
  return key === 'y' && !event.shiftKey ? 'redo' : undefined;
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement && target.type === 'text';
}
