import { createWords, presentWords, say, useWords } from '@larkhold/words';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createSpeaker } from './speak-language.ts';

const english = createWords('en-GB');

/** A speaker in a browser of a language, with all it did. */
function speakerIn(browserLanguage: string) {
  const kept = new Map<string, string>();
  const page = { documentElement: document.createElement('html') };
  let changes = 0;
  const speak = createSpeaker({
    ...{ browserLanguage, document: page },
    storage: () => ({
      setItem: (key: string, value: string) => void kept.set(key, value),
      removeItem: (key: string) => void kept.delete(key),
    }),
    onChange: () => {
      changes += 1;
    },
  });
  return { speak, kept, page, changes: () => changes };
}

describe('the language of the app', () => {
  beforeEach(() => useWords(english));
  afterEach(() => useWords(english));

  it('is the kit’s, kept for the next start, in the reader’s own kind of it', async () => {
    const { speak, kept, page, changes } = speakerIn('en-GB');
    await speak('de');
    expect([say('line.begin'), page.documentElement.lang, kept.get('larkhold-language')]).toEqual([
      ...['Beginnen', 'de', 'de'],
    ]);
    await speak(undefined);
    expect([say('line.begin'), page.documentElement.lang, kept.size, changes()]).toEqual(['Begin', 'en-GB', 0, 2]);
    const austrian = speakerIn('de-AT');
    await austrian.speak('de');
    expect([presentWords().locale, austrian.kept.size]).toEqual(['de-AT', 0]);
  });

  it('is the last that was asked for, however long the others take', async () => {
    const { speak, kept } = speakerIn('en-GB');
    await Promise.all([speak('de'), speak('en'), speak('de'), speak(undefined)]);
    expect([say('line.begin'), kept.size]).toEqual(['Begin', 0]);
  });

  it('needs no storage', async () => {
    const speak = createSpeaker({
      ...{ browserLanguage: 'en-GB', document: { documentElement: document.createElement('html') } },
      storage: () => {
        throw new DOMException('no storage', 'SecurityError');
      },
      onChange: () => {},
    });
    await speak('de');
    expect(say('line.begin')).toBe('Beginnen');
  });
});
