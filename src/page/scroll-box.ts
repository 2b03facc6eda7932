import { type Child, h, setAttribute } from './element.ts';

/**
 * A box that scrolls sideways when what it holds is wider than the page. Only while it scrolls is it
 * a stop for the keyboard, and named: a formula that fits is no such stop.
 */
export function createScrollBox(
  className: string,
  name: string,
  ...children: readonly Child[]
): HTMLElement {
  const box = h('div', { class: className, 'data-name': name }, ...children);
  observer.observe(box);
  return box;
}

const observer = new ResizeObserver((entries) => {
  for (const { target } of entries) {
    if (target.isConnected) settle(target);
    else observer.unobserve(target);
  }
});

function settle(box: Element): void {
  const scrolls = box.scrollWidth > box.clientWidth;
  setAttribute(box, 'tabindex', scrolls ? '0' : undefined);
  setAttribute(box, 'role', scrolls ? 'group' : undefined);
  setAttribute(box, 'aria-label', scrolls ? (box.getAttribute('data-name') ?? '') : undefined);
}
