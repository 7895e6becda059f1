/** Whose keys an element hears: those pressed while it, or something in it, has the focus; or every key of the page, where the page gives them away. */
export type KeysFrom = 'focus' | 'page';

/**
 * Makes an element focusable where it hears only its own keys, unless its page has said otherwise.
 * @param element the element, in the page.
 * @param keysFrom whose keys it hears.
 */
export function becomeFocusable(element: HTMLElement, keysFrom: KeysFrom): void {
  if (keysFrom === 'page') return;
  if (!element.hasAttribute('tabindex')) element.tabIndex = 0;
  if (!element.hasAttribute('role')) element.setAttribute('role', 'group');
}

/**
 * Takes the focus, so that the first press after Begin is heard; not where the focus is inside already, nor where every key is heard.
 * @param element the element.
 * @param keysFrom whose keys it hears.
 */
export function takeFocus(element: HTMLElement, keysFrom: KeysFrom): void {
  if (keysFrom === 'focus' && !element.matches(':focus-within')) element.focus({ preventScroll: true });
}

/**
 * Whether a key is meant for an element.
 * @param event a key, at the window.
 * @param element the element.
 * @param keysFrom whose keys it hears.
 * @returns false for a key of the page around it, unless every key is heard.
 */
export function isForElement(event: Event, element: HTMLElement, keysFrom: KeysFrom): boolean {
  return keysFrom === 'page' || event.composedPath().includes(element);
}
