import { launchWithTabs, openTab } from '../bench/cues/raw-tabs.mjs';
import { PATIENCE_MS } from './patience.ts';

/** The app in a tab that can truly be hidden and frozen, with a program chosen for today and the line open. */
export interface HiddenTab {
  /** Gives the value of an expression; `find(selector)` in it looks through all shadow roots. */
  evaluate(expression: string): Promise<unknown>;
  /** Waits for an expression to become true. */
  until(expression: string): Promise<void>;
  /** What the drill told: phases with where they were seen from, and closed records. */
  told(): Promise<{
    changes: { kind: string; visibility: string }[];
    notices: string[];
    /** What the page was when the drill ended: hidden or visible. */
    endedWhile: string;
    records: { reps: { outcome: string; heldMs: number }[] }[];
  }>;
  hide(): Promise<void>;
  show(): Promise<void>;
  /** All of the page stops, its Workers and its sound too, as a browser does to a tab it saves memory on. */
  freeze(): Promise<void>;
  thaw(): Promise<void>;
  close(): Promise<void>;
}

const ASK_MS = 200;

// The app's elements are in shadow roots; `find` gives the first in any of them.
const TOOLS = `
  globalThis.find = (selector, root = document) => {
    const here = root.querySelector(selector);
    if (here) return here;
    for (const one of root.querySelectorAll('*')) {
      const found = one.shadowRoot && find(selector, one.shadowRoot);
      if (found) return found;
    }
  };
  globalThis.told = { changes: [], notices: [], records: [] };
  addEventListener('lark-change', () => {
    told.changes.push({ kind: find('lark-drill').view.step?.kind, visibility: document.visibilityState });
  });
  addEventListener('lark-notice', ({ detail }) => told.notices.push(detail.message));
  addEventListener('lark-end', ({ detail }) => {
    told.records.push(detail.record);
    told.endedWhile = document.visibilityState;
  });`;

/**
 * Opens the app in a browser of its own and takes a program.
 * @param address where the app is served
 * @param text the program file's text
 * @param title the program's title
 * @param before runs in the page before anything is begun
 * @returns the tab; its Begin button is ready
 */
export async function openHiddenTab(address: string, text: string, title: string, before = ''): Promise<HiddenTab> {
  const browser = await launchWithTabs();
  const tab = await openTab(browser, `${address}#/rack`);
  const until = async (expression: string) => {
    const endMs = Date.now() + PATIENCE_MS;
    while (!(await tab.evaluate(`Boolean(${expression})`))) {
      if (Date.now() > endMs) throw new Error(`waited in vain for ${expression}`);
      await new Promise((resolve) => setTimeout(resolve, ASK_MS));
    }
  };
  await tab.evaluate(`{ ${TOOLS} ${before} }`);
  await until(`find('lark-rack')?.shadowRoot?.querySelector('li')`);
  await tab.evaluate(`{
    const files = new DataTransfer();
    files.items.add(new File([${JSON.stringify(text)}], 'a.drill.json'));
    const input = find('lark-rack').shadowRoot.querySelector('input[type=file]');
    input.files = files.files;
    input.dispatchEvent(new Event('change'));
  }`);
  const row = `[...find('lark-rack').shadowRoot.querySelectorAll('li')].find((li) => li.textContent.includes('${title}'))`;
  await until(row);
  await tab.evaluate(
    `[...${row}.querySelectorAll('button')].find((one) => /^\\s*Use today/.test(one.textContent)).click()`,
  );
  await tab.evaluate(`location.hash = '#/line'`);
  await until(`find('.begin') && find('lark-line').shadowRoot.textContent.includes('${title}')`);
  return {
    evaluate: (expression) => tab.evaluate(expression),
    until,
    told: async () => JSON.parse(await tab.evaluate('JSON.stringify(told)')),
    async hide() {
      await tab.hide();
      await until(`document.visibilityState === 'hidden'`);
    },
    async show() {
      await tab.show();
      await until(`document.visibilityState === 'visible'`);
    },
    freeze: () => tab.send('Page.setWebLifecycleState', { state: 'frozen' }).then(() => undefined),
    thaw: () => tab.send('Page.setWebLifecycleState', { state: 'active' }).then(() => undefined),
    async close() {
      await tab.close();
      await browser.close();
    },
  };
}
