import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Rules of WCAG 2.0 to 2.2 at levels A and AA, and axe-core's best practices. */
const allRules = {
  type: 'tag',
  values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
};
/** Those that can differ from theme to theme. */
const colourRules = { type: 'rule', values: ['color-contrast', 'link-in-text-block'] };

/**
 * Runs axe-core over a page. The page's own policy lets no foreign script in; an isolated evaluation is not one.
 * @param page as it is
 * @param rules all, or those about colours alone
 * @returns each rule that is broken, with the first place
 */
export async function axeFaults(page: Page, rules: 'all' | 'colours' = 'all'): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axeSource);
  return page.evaluate(
    async (runOnly) => {
      const { axe } = window as unknown as {
        axe: { run(options: unknown): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
      };
      const { violations } = await axe.run({ runOnly, resultTypes: ['violations'] });
      return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)} (${nodes.length})`);
    },
    rules === 'all' ? allRules : colourRules,
  );
}

/**
 * Looks for what a narrow or enlarged page pushes past an edge.
 * @param page as it is
 * @returns whether anything scrolls sideways that is not a named region, what is outside of the page, and what is cut off
 */
export function spillFaults(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    const faults: string[] = [];
    if (document.documentElement.scrollWidth > width) faults.push(`${document.documentElement.scrollWidth} px wide`);
    const nameOf = (element: Element) =>
      `${element.localName}.${element.getAttribute('class') ?? ''} ${element.textContent?.trim().slice(0, 40)}`;
    const check = (element: Element) => {
      if (element.closest('.visually-hidden, .unseen, .skip') || !element.checkVisibility()) return;
      const { overflowX, overflowY, textOverflow, webkitLineClamp } = getComputedStyle(element);
      const isSideways = element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 0;
      const isScroller = [overflowX, overflowY].some((way) => way === 'auto' || way === 'scroll');
      if (isSideways && isScroller && !element.matches('[role=region][tabindex="0"], textarea')) {
        faults.push(`scrolls sideways: ${nameOf(element)}`);
      }
      const isCut = isSideways && (element.localName === 'button' || overflowX === 'hidden');
      const isLow = overflowY === 'hidden' && element.scrollHeight > element.clientHeight + 2;
      if ((isCut || isLow) && textOverflow !== 'ellipsis' && webkitLineClamp === 'none')
        faults.push(`cut off: ${nameOf(element)}`);
      const isLeaf = [...element.childNodes].some(({ nodeType, textContent }) => nodeType === 3 && textContent?.trim());
      if (!isLeaf && !element.matches('button, input, select, textarea, svg, canvas')) return;
      const { left, right, width: wide } = element.getBoundingClientRect();
      if (wide > 0 && (right > width + 1 || left < -1)) {
        faults.push(`outside by ${Math.round(Math.max(right - width, -left))}: ${nameOf(element)}`);
      }
    };
    const walk = (root: Document | ShadowRoot) => {
      for (const element of (root instanceof Document ? root.body : root).querySelectorAll('*')) check(element);
      for (const element of root.querySelectorAll('*')) if (element.shadowRoot) walk(element.shadowRoot);
    };
    walk(document);
    return [...new Set(faults)];
  });
}

/** Animations that run, over all shadow roots. */
export function motionFaults(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const faults: string[] = [];
    const walk = (root: Document | ShadowRoot) => {
      for (const animation of root.getAnimations()) {
        if (animation.playState !== 'running') continue;
        const target = animation.effect instanceof KeyframeEffect ? animation.effect.target : null;
        faults.push(`${target?.localName}.${target?.getAttribute('class')} moves`);
      }
      for (const { shadowRoot } of root.querySelectorAll('*')) if (shadowRoot) walk(shadowRoot);
    };
    walk(document);
    return [...new Set(faults)];
  });
}

/**
 * Under forced colours the page's ground is the system's: what is drawn must contrast with that, not with ours.
 * @param page with `forcedColors: 'active'`
 * @returns drawn lines, shapes, words and charts with a contrast below 3 (WCAG 2.2, 1.4.11) to the system's ground
 */
export function forcedFaults(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const probe = document.createElement('p');
    document.body.append(probe);
    probe.style.color = 'Canvas';
    const channels = (colour: string) => (colour.match(/[\d.]+/g) ?? []).map(Number);
    const ground = channels(getComputedStyle(probe).color);
    probe.remove();
    // WCAG 2.2, relative luminance and contrast ratio.
    const luminance = ([r = 0, g = 0, b = 0]: number[]) => {
      const [x = 0, y = 0, z = 0] = [r, g, b].map((value) => {
        const part = value / 255;
        return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * x + 0.7152 * y + 0.0722 * z;
    };
    const contrast = (one: number[], other: number[]) => {
      const [a, b] = [luminance(one), luminance(other)];
      return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    };
    const faults: string[] = [];
    const isFaint = (colour: string, behind: number[]) => {
      if (colour === 'none' || colour.startsWith('url') || channels(colour)[3] === 0) return false;
      return contrast(channels(colour), behind) < 3;
    };
    /** A drawing that keeps its own ground, as what a camera reads does. */
    const groundOf = (element: SVGElement) => {
      const drawing = getComputedStyle(element.ownerSVGElement ?? element);
      const own = channels(drawing.backgroundColor);
      return drawing.getPropertyValue('forced-color-adjust') === 'none' && own[3] !== 0 ? own : ground;
    };
    const check = (element: Element) => {
      const style = getComputedStyle(element);
      if (element instanceof HTMLCanvasElement && element.width > 0) return checkCanvas(element);
      if (!(element instanceof SVGGeometryElement || element instanceof SVGTextElement)) return;
      if (!element.checkVisibility({ opacityProperty: true }) || element.closest('clipPath, mask, defs')) return;
      const colours = element instanceof SVGTextElement ? [style.fill] : [style.fill, style.stroke];
      const shown = colours.filter((colour) => colour !== 'none');
      if (shown.length === 0 || !shown.every((colour) => isFaint(colour, groundOf(element)))) return;
      faults.push(`${element.localName}.${element.getAttribute('class')} in ${shown} cannot be seen`);
    };
    const checkCanvas = (canvas: HTMLCanvasElement) => {
      const { data } = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height) ?? { data: [] };
      let seen = 0;
      for (let at = 0; at + 3 < data.length; at += 4) {
        if (data[at + 3]! > 128 && contrast([data[at]!, data[at + 1]!, data[at + 2]!], ground) >= 3) seen += 1;
      }
      // A line across the chart is at least as many points as the chart is wide.
      if (seen < canvas.width) faults.push(`a chart shows ${seen} points of ${canvas.width} wide`);
    };
    const walk = (root: Document | ShadowRoot) => {
      for (const element of root.querySelectorAll('*')) {
        check(element);
        if (element.shadowRoot) walk(element.shadowRoot);
      }
    };
    walk(document);
    return [...new Set(faults)];
  });
}

/** Roles that say nothing without a name. */
const named =
  'button|link|textbox|searchbox|checkbox|radio|combobox|slider|spinbutton|img|dialog|region|progressbar|radiogroup|table';

/**
 * Reads the page as a screen reader is given it.
 * @param page as it is
 * @returns what has no name, how often it is not exactly one first heading, and names that a program left unfinished
 */
export async function nameFaults(page: Page): Promise<string[]> {
  const lines = (await page.locator('body').ariaSnapshot()).split('\n').map((line) => line.trim());
  const unnamed = new RegExp(`^- (?:${named})(?! ")`);
  const firsts = lines.filter((line) => /^- heading .*\[level=1\]/.test(line));
  return [
    ...lines.filter((line) => unnamed.test(line)).map((line) => `no name: ${line}`),
    ...lines.filter((line) => /undefined|\[object|NaN/.test(line)).map((line) => `unfinished: ${line}`),
    ...(firsts.length === 1 ? [] : [`${firsts.length} first headings`]),
  ];
}
