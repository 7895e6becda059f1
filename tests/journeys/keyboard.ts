import type { Page } from 'playwright-core';
import { PATIENCE_MS } from './patience.ts';

/** What has the focus, as a person and a screen reader meet it. */
export interface Focus {
  /** Its name, by label, `aria-label` or text. */
  name: string;
  tag: string;
  /** Why it can't be seen there; undefined where it can. */
  fault?: string;
}

/** Nothing has the focus: the next tab key begins at the top. */
export const LOST = 'the focus is lost';

/** Reads the focus through every shadow root. */
export function focusOf(page: Page): Promise<Focus> {
  return page.evaluate((lost) => {
    let at = document.activeElement ?? document.body;
    while (at.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    const labels = 'labels' in at ? [...((at as HTMLInputElement).labels ?? [])] : [];
    const labelled = labels.map((label) => label.textContent).join(' ');
    const name = (at.getAttribute('aria-label') ?? (labelled || at.textContent || '')).replace(/\s+/g, ' ').trim();
    const found = { name, tag: at.localName };
    if (at === document.body) return { ...found, fault: lost };
    const hasRing = (element: Element | null) => {
      if (!element) return false;
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
    };
    // A place that was gone to, not a control: it is read from there, and the next tab stop shows itself.
    if (at.matches('[tabindex="-1"]')) return found;
    // The last stop of a date field is the browser's own button in it, with the browser's own ring.
    if (at.matches('input[type="date"]')) return found;
    if (!hasRing(at) && !hasRing(at.closest('label'))) return { ...found, fault: `no ring around ${name}` };
    const { left, top, width, height } = at.getBoundingClientRect();
    if (width === 0 || height === 0) return { ...found, fault: `${name} is not drawn` };
    const points = [0.1, 0.5, 0.9].flatMap((x) => [0.1, 0.5, 0.9].map((y) => [left + x * width, top + y * height]));
    const isSeen = points.some(([x = 0, y = 0]) => {
      let top = document.elementFromPoint(x, y);
      for (let inner = top; inner; inner = inner.shadowRoot?.elementFromPoint(x, y) ?? null) {
        if (inner === top && inner !== document.elementFromPoint(x, y)) break;
        top = inner;
        if (!inner.shadowRoot) break;
      }
      return top !== null && (top === at || at.contains(top) || top.contains(at));
    });
    // WCAG 2.2, 2.4.11: what has the focus is not wholly covered.
    return isSeen ? found : { ...found, fault: `${name} is covered` };
  }, LOST);
}

/** Goes on by the tab key, back with `shift`, to the control whose name begins so. Every stop on the way has to show itself. */
export async function tabTo(page: Page, name: string | RegExp, way: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  const passed: string[] = [];
  for (let step = 0; step < 150; step += 1) {
    await page.keyboard.press(way);
    const focus = await focusOf(page);
    if (typeof name === 'string' ? focus.name.startsWith(name) : name.test(focus.name)) {
      if (focus.fault) throw new Error(focus.fault);
      return;
    }
    if (focus.fault && focus.fault !== LOST) throw new Error(focus.fault);
    passed.push(focus.name.slice(0, 30));
  }
  throw new Error(`the tab key does not reach ${name}; passed: ${passed.join(' | ')}`);
}

/** Presses a key, and expects that something in the page has the focus afterwards. */
export async function press(page: Page, key: string): Promise<void> {
  await page.keyboard.press(key);
  const isLost = async (): Promise<boolean> => {
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 60))));
    // What is drawn again may push it out of sight; the next stop brings it back.
    return (await focusOf(page)).fault === LOST;
  };
  // A control that goes away has its focus handed on a tenth of a second later, or as much later as the machine is busy.
  const endAt = Date.now() + PATIENCE_MS;
  while (await isLost()) if (Date.now() > endAt) throw new Error(`after ${key}: ${LOST}`);
}

/** Goes to a control by the tab key and presses it. */
export async function tabAndPress(page: Page, name: string | RegExp, key = 'Enter'): Promise<void> {
  await tabTo(page, name);
  await press(page, key);
}

/** Goes to a field by the tab key and types over what is there. */
export async function tabAndType(page: Page, name: string | RegExp, text: string): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
}
