import { createJournal, type Journal } from '@larkhold/engine';
import { createSquadShelf, openStore, type SquadShelf, type Store } from '@larkhold/store';
import type { App } from '../app-context.ts';
import { type AppState, createAppState } from '../app-state.ts';

/** What a test of a page needs. */
export interface TrialApp {
  store: Store;
  state: AppState;
  /** Files that were handed out. */
  saved: { name: string; text: string }[];
}

let count = 0;

/**
 * Gives a page the app over a store of its own, on a Wednesday, 25 November 2026. For tests in a browser.
 * @param page the element; its `app` follows the store
 * @param journal what is in it; nothing if left out
 * @param squad the coach's shelf, as an earlier page left it; a new one if left out
 * @returns the store, its state and what was saved
 */
export async function openTrialApp(
  page: { app: App | undefined },
  journal: Journal = createJournal(),
  squad?: SquadShelf,
): Promise<TrialApp> {
  count += 1;
  const name = `trial-${count}-${crypto.randomUUID()}`;
  const store = await openStore({ name });
  await store.replaceJournal(journal);
  const saved: TrialApp['saved'] = [];
  const state = createAppState({
    store,
    squad: squad ?? createSquadShelf(`${name}-squad`),
    today: () => '2026-11-25',
    instant: () => '2026-11-25T20:00:00Z',
    newId: () => `new-${count}`,
    saveFile: (name, text) => saved.push({ name, text }),
    trySound: () => undefined,
    askForPersistence: async () => 'kept',
  });
  state.subscribe((app) => {
    page.app = app;
  });
  await state.reload();
  return { store, state, saved };
}
