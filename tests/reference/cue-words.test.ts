// Nothing that is said or sounded in a drill may be mistaken for an order to let the string go. The words are those that judges, coaches and
// archers use for it in English; common practice, no single source.
import { readFileSync } from 'node:fs';
import { cueTone, pressSounds, type SoundKind } from '@larkhold/cues';
import { builtInPrograms, checkCall, layOut, prescribe } from '@larkhold/engine';
import { describe, expect, it } from 'vitest';

const ORDER =
  /\b(releas\w*|loos(e|es|ed|ing)|fir(e|es|ed|ing)|shoot\w*|shot|let (it |the string |the arrow )?(go|fly)|away|go|send it|now)\b/i;
const pack = JSON.parse(readFileSync(new URL('../../packages/cues/sprites/en/pack.json', import.meta.url), 'utf8')) as {
  sprites: { words: string }[];
  kinds: Record<string, string>;
};

describe('words', () => {
  it.each(pack.sprites.map(({ words }) => words))('phrase: %s', (words) => {
    expect(words).not.toMatch(ORDER);
  });

  it('what is said for them in German', () => {
    const german = JSON.parse(
      readFileSync(new URL('../../packages/cues/sprites/de/phrases.json', import.meta.url), 'utf8'),
    ) as { phrases: { say: string }[] };
    expect(german.phrases.length).toBeGreaterThan(100);
    for (const { say } of german.phrases) expect([say, checkCall(say)]).toEqual([say, undefined]);
  });

  it('the phrases of all kinds of cue', () => {
    for (const words of Object.values(pack.kinds)) expect(words).not.toMatch(ORDER);
  });

  it('every cue word and call of every built-in program, both letting down to rest and to set-up, with both hands', () => {
    let count = 0;
    for (const program of builtInPrograms) {
      const today = prescribe({ program, records: [], today: '2026-11-25' });
      for (const hand of ['usual', 'opposite', 'both'] as const) {
        const blocks = today.blocks.map((block) => ({ ...block, hand }));
        for (const { words } of layOut({ ...today, blocks }).cues) {
          count += 1;
          expect(words ?? '').not.toMatch(ORDER);
        }
      }
    }
    expect(count).toBeGreaterThan(1000);
  });

  it("a coach's calls and an archer's own steps that order a shot are left unsaid", () => {
    const bad = [
      ...[
        'Release',
        'Loose!',
        'and fire',
        'Releasing now',
        'Let go now',
        'Shoot',
        'Drop the string',
        'Open your fingers',
      ],
      ...['GO!', 'Los', 'Lâche', 'R\u0435lease', 'rele\u200base', 'ｒｅｌｅａｓｅ', 'Reach'],
    ];
    const [program] = builtInPrograms;
    const today = prescribe({ program: program!, records: [], today: '2026-11-25' });
    for (const [calls, shotProcess] of [
      [bad, []],
      ['shot-process' as const, bad],
    ] as const) {
      const blocks = today.blocks.map((block) => ({ ...block, reps: 1, calls }));
      const said = (allowedCalls: readonly string[]) =>
        layOut({ ...today, blocks }, { shotProcess, allowedCalls }).cues.filter(({ kind }) => kind === 'call');
      expect(said(bad).map(({ words }) => words)).toEqual(['Reach']);
      expect(said([])).toEqual([]);
    }
  });
});

describe('tones', () => {
  // World Archery rules, book 3, 13.1.2 (from memory): two whistles to the line, one to begin shooting, three to stop. A long level note
  // at the end of a hold could be mistaken for the one that begins.
  it('the one that ends a hold falls all the way and is no level note', () => {
    const rate = 24_000;
    const samples = cueTone('letDown', rate);
    const crossings = (from: number, to: number) => {
      let count = 0;
      for (let index = from + 1; index < to; index += 1)
        if (samples[index - 1]! < 0 !== samples[index]! < 0) count += 1;
      return count;
    };
    const fifth = Math.floor(samples.length / 5);
    const counts = [0, 1, 2, 3, 4].map((part) => crossings(part * fifth, (part + 1) * fifth));
    for (const [index, count] of counts.entries()) if (index > 0) expect(count).toBeLessThan(counts[index - 1]!);
  });

  it('no other cue sounds as the let-down does', () => {
    const kinds: SoundKind[] = [
      ...pressSounds,
      'mark',
      'ready',
      'draw',
      'hold',
      'half',
      'count',
      'call',
      'rest',
      'setRest',
      'restOver',
      'done',
    ];
    const letDown = cueTone('letDown', 24_000).length;
    for (const kind of kinds) expect(cueTone(kind, 24_000).length).not.toBe(letDown);
  });
});
