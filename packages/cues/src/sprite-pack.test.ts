import { readFileSync, statSync } from 'node:fs';
import { builtInPrograms, layOut, prescribe } from '@larkhold/engine';
import { describe, expect, it } from 'vitest';
import { phrases } from './phrases.ts';
import { cutSprites, getWords, loadSpritePack, type SpritePack } from './sprite-pack.ts';

const keyOf = (words: string) =>
  words
    .toLowerCase()
    .replace(/[^a-z]+/g, ' ')
    .trim();
const folder = new URL('../sprites/en/', import.meta.url);
const english = JSON.parse(readFileSync(new URL('pack.json', folder), 'utf8')) as SpritePack;

const pack: SpritePack = {
  format: 'larkhold-sprites',
  version: 1,
  language: 'en',
  files: [],
  kinds: { setRest: 'Rest' },
  sprites: [
    { words: 'Rest', startMs: 100, durationMs: 100 },
    { words: 'Set two', startMs: 300, durationMs: 100 },
    { words: 'Of three', startMs: 500, durationMs: 100 },
  ],
};

/** One second at 1 kHz: 0.5 from 110, 310 and 510 ms on, for 50 ms each. */
const sound = {
  sampleRate: 1000,
  samples: Float32Array.from({ length: 1000 }, (_, ms) =>
    [110, 310, 510].some((at) => ms >= at && ms < at + 50) ? 0.5 : 0,
  ),
};

describe('sprite pack', () => {
  const words = cutSprites(pack, sound);

  it('cuts a phrase at its first audible sample', () => {
    const rest = words.byWords.get('rest');
    expect(rest?.findIndex((sample) => sample > 0)).toBe(1);
    expect(rest?.length).toBe(91);
  });

  it('puts words together from phrases', () => {
    const all = getWords(words, { kind: 'setRest', words: 'Rest. Set two of three' });
    expect(all?.length).toBe(3 * 91);
    expect(getWords(words, { kind: 'setRest', words: 'Rest. Set two of three' })).toBe(all);
  });

  it('says the plain phrase of its kind rather than half of the words, and nothing for half a call', () => {
    expect(getWords(words, { kind: 'setRest', words: 'Rest. Next: Wall sits' })).toBe(words.byWords.get('rest'));
    expect(getWords(words, { kind: 'call', words: 'Rest your eyes' })).toBeUndefined();
    expect(getWords(undefined, { kind: 'rest' })).toBeUndefined();
  });

  it('another language is another folder: its sounds replace the words that cues bring', async () => {
    const german: SpritePack = {
      ...{ format: 'larkhold-sprites', version: 1, language: 'de' },
      files: ['unknown-codec', 'sound'],
      kinds: { draw: 'Draw' },
      sprites: [
        { words: 'Draw', startMs: 100, durationMs: 100 },
        { words: 'Three', startMs: 300, durationMs: 100 },
      ],
    };
    const folder: Record<string, string> = {
      'pack.json': `data:application/json,${encodeURIComponent(JSON.stringify(german))}`,
      'unknown-codec': 'data:,no',
      sound: 'data:,ziehen',
    };
    const loaded = await loadSpritePack(
      (name) => folder[name] ?? `data:,missing ${name}`,
      async (bytes) => {
        if (new TextDecoder().decode(bytes) !== 'ziehen') throw new TypeError('not known here');
        return sound;
      },
    );
    expect(getWords(loaded, { kind: 'draw', words: 'Draw' })).toBe(loaded.byWords.get('draw'));
    expect(getWords(loaded, { kind: 'count', words: 'three' })?.length).toBe(91);
    expect(getWords(loaded, { kind: 'count', words: 'two' })).toBeUndefined();
  });

  it('refuses what is no pack, and one whose sound nobody can decode', async () => {
    const data = (value: unknown) => `data:application/json,${encodeURIComponent(JSON.stringify(value))}`;
    const decode = () => Promise.reject(new TypeError('no codec'));
    for (const wrong of [{}, { ...pack, version: 2 }, { ...pack, files: 'a' }, null]) {
      await expect(loadSpritePack(() => data(wrong), decode)).rejects.toThrow(TypeError);
    }
    await expect(loadSpritePack(() => data({ ...pack, files: ['a'] }), decode)).rejects.toThrow('could be decoded');
  });

  it('the English folder says everything that every built-in program brings but for titles and calls', () => {
    const all = english.sprites.map((sprite, index) => ({ ...sprite, startMs: index * 100, durationMs: 100 }));
    const heard = Float32Array.from({ length: all.length * 100 }, () => 0.5);
    const spoken = cutSprites({ ...english, sprites: all }, { sampleRate: 1000, samples: heard });
    const unsaid = new Set<string>();
    for (const program of builtInPrograms) {
      for (const cue of layOut(prescribe({ program, records: [], today: '2026-11-25' })).cues) {
        const own = getWords({ ...spoken, byKind: {} }, cue);
        const isTitle = /next drill|next:/i.test(cue.words ?? '');
        if (!own && cue.kind !== 'call' && !isTitle) unsaid.add(cue.words ?? cue.kind);
        if (cue.kind !== 'call' && cue.kind !== 'count') expect(getWords(spoken, cue)).toBeDefined();
      }
    }
    expect([...unsaid]).toEqual([]);
  });

  it('has every phrase that is said beside the cues', () => {
    const byWords = new Map(english.sprites.map(({ words }) => [words, new Float32Array(1)]));
    const heard = {
      sampleRate: 1000,
      byWords: new Map([...byWords].map(([words, one]) => [keyOf(words), one])),
      byKind: {},
    };
    const all = Object.values(phrases).flatMap((one) => (typeof one === 'string' ? [one] : Object.values(one)));
    expect(all.filter((words) => !getWords(heard, { kind: 'question', words }))).toEqual([]);
  });

  it('has no word that could be mistaken for an order to let an arrow go', () => {
    const text = english.sprites.map((sprite) => sprite.words).join('\n');
    expect(text).not.toMatch(/releas|loos|fir(e|ing)\b|shoot|let go/i);
  });

  it('has what a drill done by ear needs, one phrase after the other, in less than 450 kB', () => {
    expect(english.sprites.length).toBeGreaterThanOrEqual(110);
    for (const [index, sprite] of english.sprites.entries()) {
      const next = english.sprites[index + 1];
      if (next) expect(sprite.startMs + sprite.durationMs).toBeLessThanOrEqual(next.startMs);
    }
    const bytes = ['pack.json', ...english.files].reduce((sum, name) => sum + statSync(new URL(name, folder)).size, 0);
    expect(bytes).toBeLessThan(450_000);
  });
});

it('German has a phrase for every English one', () => {
  const german = JSON.parse(readFileSync(new URL('../sprites/de/pack.json', import.meta.url), 'utf8')) as SpritePack;
  expect(german.language).toBe('de');
  expect(german.sprites.map(({ words }) => words)).toEqual(english.sprites.map(({ words }) => words));
  expect(german.kinds).toEqual(english.kinds);
});
