import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { describe, expect, it } from 'vitest';
import { createSquadShelf } from './squad-shelf.ts';

describe('a coach’s shelf', () => {
  it('keeps one hand-over for each archer, also for a later start, and tells who changed', async () => {
    const shelf = createSquadShelf('squad-1');
    const heard: unknown[] = [];
    const stop = shelf.subscribe((...change) => heard.push(change));
    await shelf.keep('mo', 'first');
    await shelf.keep('ines', 'hers');
    await shelf.keep('mo', 'second');
    expect(await createSquadShelf('squad-1').read()).toEqual(['hers', 'second']);
    await shelf.remove('ines');
    await shelf.remove('nobody');
    stop();
    await shelf.remove('mo');
    expect(await shelf.read()).toEqual([]);
    expect(heard).toEqual([
      ['mo', 'first'],
      ['ines', 'hers'],
      ['mo', 'second'],
      ['ines', undefined],
      ['nobody', undefined],
    ]);
  });

  it('reads past what is no text', async () => {
    await createSquadShelf('squad-2').keep('mo', 'file');
    const database = await openDB('squad-2');
    await database.put('handOvers', { no: 'text' }, 'odd');
    database.close();
    expect(await createSquadShelf('squad-2').read()).toEqual(['file']);
  });

  it('says what the browser said where nothing can be kept', async () => {
    const database = await openDB('squad-3', 2); // a newer version of the app was here
    database.close();
    await expect(createSquadShelf('squad-3').keep('mo', 'file')).rejects.toThrow(/version/i);
  });
});
