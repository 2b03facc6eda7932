export type Child = Node | string | undefined | false;

export interface Attributes {
  readonly [name: string]: string | number | boolean | undefined | Listeners;
  readonly on?: Listeners;
}

type Listeners = { readonly [event: string]: (event: Event) => void };

export const MATHML = 'http://www.w3.org/1998/Math/MathML';
export const SVG = 'http://www.w3.org/2000/svg';

/**
 * An HTML element with attributes and children. Text goes in as text, never as markup.
 * `true` sets an empty attribute; `false` and `undefined` leave it out; `on` adds listeners.
 */
export function h<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  return furnish(document.createElement(tag), attributes, children);
}

/** The same for an element of another namespace: `MATHML` or `SVG`. */
export function inNamespace(
  namespace: string,
  tag: string,
  attributes: Attributes = {},
  ...children: readonly Child[]
): Element {
  return furnish(document.createElementNS(namespace, tag), attributes, children);
}

/** Mutates the element: what was in it goes, the children come. */
export function fill(element: Element, ...children: readonly Child[]): void {
  element.replaceChildren(...children.filter(isPresent));
}

/** Mutates the element: sets, or with `undefined` removes, one attribute. */
export function setAttribute(element: Element, name: string, value: string | undefined): void {
  if (value === undefined) element.removeAttribute(name);
  else if (element.getAttribute(name) !== value) element.setAttribute(name, value);
}

function furnish<T extends Element>(
  element: T,
  attributes: Attributes,
  children: readonly Child[],
): T {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'object') listen(element, value);
    else if (value === true) element.setAttribute(name, '');
    else if (value !== undefined && value !== false) element.setAttribute(name, String(value));
  }
  element.append(...children.filter(isPresent));
  return element;
}

function listen(element: Element, listeners: Listeners): void {
  for (const [event, listener] of Object.entries(listeners)) {
    element.addEventListener(event, listener);
  }
}

function isPresent(child: Child): child is Node | string {
  return child !== undefined && child !== false;
}
