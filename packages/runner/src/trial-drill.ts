import type { LarkDrill } from './lark-drill.ts';
import { type TrialEnvironment, trialEnvironment, trialPrescription } from './trial-environment.ts';

/**
 * A drill of the trial's prescription on the page, as high as the window, not begun.
 * @param changes to its properties
 * @param environment its clock and sound
 * @returns the element, drawn, and its environment
 */
export async function trialDrill(
  changes: Partial<LarkDrill> = {},
  environment: TrialEnvironment = trialEnvironment(),
): Promise<{ drill: LarkDrill; environment: TrialEnvironment }> {
  const drill = document.createElement('lark-drill');
  Object.assign(drill, {
    prescription: trialPrescription(),
    programTitle: 'Morning holds',
    environment,
    keysFrom: 'page',
    ...changes,
  });
  drill.style.height = '100vh';
  document.body.append(drill);
  await drill.updateComplete;
  return { drill, environment };
}

/**
 * What is on the display.
 * @param drill a drill on the page
 * @param selector of an element of its glance display
 * @returns its text; empty where there is none
 */
export async function glanceText(drill: LarkDrill, selector: string): Promise<string> {
  await drill.updateComplete;
  const glance = drill.renderRoot.querySelector('lark-glance');
  await glance?.updateComplete;
  return glance?.renderRoot.querySelector(selector)?.textContent?.trim() ?? '';
}

/**
 * Listens to a drill.
 * @param drill a drill on the page
 * @param type of its events
 * @returns the details of those events, as they come
 */
export function heard<T>(drill: LarkDrill, type: string): T[] {
  const details: T[] = [];
  drill.addEventListener(type, (event) => {
    if (event instanceof CustomEvent) details.push(event.detail);
  });
  return details;
}

/** Presses a key where the focus is. */
export function press(code: string, more: KeyboardEventInit = {}): void {
  window.dispatchEvent(new KeyboardEvent('keydown', { code, cancelable: true, bubbles: true, ...more }));
}
