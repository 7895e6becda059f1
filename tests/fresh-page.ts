import { afterEach, beforeAll, vi } from 'vitest';
import '@larkhold/ui/tokens.css';

/**
 * All browser tests share one page, so that the modules load once. Each file begins with what a new page of the app would have: its tokens, an empty body, and a root that
 * says nothing of language, theme or size.
 */
beforeAll(() => {
  document.body.replaceChildren();
  for (const element of [document.documentElement, document.body]) {
    for (const { name } of [...element.attributes]) element.removeAttribute(name);
  }
});

/** Each test leaves nothing on the page, neither theme nor text size, and no function that it watched. */
afterEach(() => {
  document.body.replaceChildren();
  document.documentElement.removeAttribute('data-theme');
  document.documentElement.style.fontSize = '';
  vi.restoreAllMocks();
});
