import { formatJournal } from '@larkhold/engine';
import type { App } from './app-context.ts';

/**
 * Saves the journal as another device gets it. Marks of removed things go with it, so that the other device removes them too.
 * @param app the app as it is
 */
export async function saveJournal({ act, view }: App): Promise<void> {
  act.saveFile(`larkhold-${view.today}.journal.json`, formatJournal(await act.storedJournal(), act.instant()));
}
