import { openStore } from '@larkhold/store';
import { loadWords, useWords } from '@larkhold/words';
import axe from 'axe-core';
import { page as frame } from 'vitest/browser';
import { type AppState, createAppState } from './app-state.ts';
import '../lark-app.ts';
import type { LarkApp } from '../lark-app.ts';

/** An app for tests in a browser, over a store of its own. */
export interface TrialApp {
  state: AppState;
  page: LarkApp;
  /** Files that were handed to the archer. */
  saved: { name: string; text: string }[];
  /** What axe finds wrong, one line each. */
  faults(): Promise<string[]>;
}

/**
 * Opens the app for a test.
 * @param hash where it starts, '#/line'
 * @param today ISO 8601 day
 * @param changes what the app is given in place of the usual: a store, or who hears of faults
 * @returns the app, read once
 */
export async function openTrialApp(
  hash: string,
  today = '2026-11-25',
  changes: Partial<Parameters<typeof createAppState>[0]> = {},
): Promise<TrialApp> {
  const saved: TrialApp['saved'] = [];
  const state = createAppState({
    store: changes.store ?? (await openStore({ name: `trial-${performance.now()}` })),
    today: () => today,
    instant: () => `${today}T06:00:00Z`,
    newId: () => crypto.randomUUID(),
    saveFile: (name, text) => saved.push({ name, text }),
    trySound: () => {},
    askForPersistence: async () => 'unknown',
    ...changes,
  });
  location.hash = hash;
  const page = document.createElement('lark-app');
  document.body.append(page);
  state.subscribe((app) => {
    page.app = app;
  });
  await state.reload();
  return {
    ...{ state, page, saved },
    faults: async () => {
      const { violations } = await axe.run(page, { resultTypes: ['violations'] });
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
    },
  };
}

/** Leaves window and words as a test finds them: for after each test of a file that changes any of these. */
export async function leaveTrial(): Promise<void> {
  useWords(await loadWords('en-GB'));
  await frame.viewport(414, 896);
}

/**
 * Text as people read it.
 * @param node any
 * @returns its text, with plain spaces
 */
export function textOf(node: Node | null | undefined): string {
  return (node?.textContent ?? '').replaceAll(/\s+/g, ' ').trim();
}
