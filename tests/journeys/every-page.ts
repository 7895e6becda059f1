import type { Page } from 'playwright-core';

/** Every place and page of the app, by address. `{id}` stands for a program of the rack, `{drill}` for a drill record. */
export const everyPage = [
  '#/line',
  '#/rack',
  '#/rack/{id}',
  '#/journal',
  '#/journal/{drill}',
  '#/week',
  '#/trends',
  '#/coach',
  '#/milestones',
  '#/plan',
  '#/kit',
  '#/kit/bow',
  '#/kit/shot-process',
  '#/kit/sound',
  '#/kit/display',
  '#/kit/controls',
  '#/kit/camera',
  '#/kit/backup',
  '#/kit/stored',
  '#/kit/safety',
  '#/files',
  '#/bench/new',
  '#/bench/{id}',
  '#/open/x',
] as const;

/**
 * Goes to a page, waits until it is drawn, and opens what is folded.
 * @param page where the app is
 * @param hash one of `everyPage`
 */
export async function goTo(page: Page, hash: string, ids: { id: string; drill: string }): Promise<void> {
  await page.goto(`${page.url().split('#')[0]}${hash.replace('{id}', ids.id).replace('{drill}', ids.drill)}`);
  // A page that is loaded when it is first opened is drawn a moment later.
  await page.waitForTimeout(60);
  await page.locator('main > :last-child h1').first().waitFor();
}

/**
 * Opens the folds of the page, also those inside elements.
 * @param page where the app is
 * @param most how many of elements with one tag; a year's journal has hundreds that are alike
 */
export async function unfold(page: Page, most = Number.POSITIVE_INFINITY): Promise<void> {
  await page.evaluate((limit) => {
    const opened = new Map<string, number>();
    const open = (root: Document | ShadowRoot, tag: string) => {
      for (const element of root.querySelectorAll('*')) {
        if (element instanceof HTMLDetailsElement && !element.open && (opened.get(tag) ?? 0) < limit) {
          opened.set(tag, (opened.get(tag) ?? 0) + 1);
          element.open = true;
        }
        if (element.shadowRoot) open(element.shadowRoot, element.localName);
      }
    };
    open(document, 'html');
  }, most);
  await page.waitForTimeout(150);
}
