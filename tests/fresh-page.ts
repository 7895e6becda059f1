import { beforeAll } from 'vitest';
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
