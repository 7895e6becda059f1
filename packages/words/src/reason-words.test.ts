import { builtInPrograms, type Prescription, prescribe, type Reason } from '@larkhold/engine';
import { describe, expect, it, test } from 'vitest';
import { cautionsOf } from './caution-words.ts';
import { createWords } from './create-words.ts';
import { reasonWords } from './reason-words.ts';
import { whyWords } from './why-words.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const english = createWords('en-GB');
const german = createWords('de');
const today = '2026-11-25';
const all: Prescription[] = builtInPrograms.flatMap((program) =>
  [undefined, 4].map((minutes) =>
    prescribe({
      ...{ program, records: [], today, minutes },
      days: [
        { date: today, readiness: 'heavy', arrows: [{ kind: 'practice', count: 150 }] },
        { date: '2026-11-24', pain: true },
      ],
    }),
  ),
);

describe.each([english, german])('in $language', (words) => {
  it('says every reason, caution and why as whole sentences', () => {
    for (const prescription of all) {
      const sentences = [
        ...prescription.reasons.map((reason) => reasonWords(reason, words)),
        ...cautionsOf(prescription, words),
        ...prescription.blocks.flatMap(({ block }) =>
          (['sets', 'reps', 'draw', 'hold', 'letDown', 'rest', 'setRest', 'addedWeight', 'duration'] as const).flatMap(
            (number) => whyWords(prescription, block, number, words),
          ),
        ),
      ];
      for (const sentence of sentences) expect(sentence).toMatch(/^[\p{Lu}\d].*[.?!]$/u);
    }
  });
});

// The sentences are the product's own: no outside source. The numbers are those of the facts.
test('a reason reads its facts, and another language does the same', () => {
  const reason: Reason = {
    ...{ rule: 'effort', block: 0, change: '' },
    facts: { title: 'Holding', keep: 0.8, from: 10, reps: 8, sets: 2, hold: 30, effort: 9, on: '2026-11-24' },
  };
  expect(plain(reasonWords(reason, english))).toBe(
    'Holding: 8 reps instead of 10, because the effort last time was 9 of 10.',
  );
  expect(plain(reasonWords(reason, german))).toBe(
    'Holding: 8 Wiederholungen statt 10, weil die Anstrengung beim letzten Mal 9 von 10 war.',
  );
});

test('no reason orders a shot', () => {
  for (const prescription of all) {
    for (const reason of prescription.reasons) {
      expect(reasonWords(reason, english)).not.toMatch(/\b(releas|loos|fir)(e|es|ed|ing)\b|let go/i);
      expect(reasonWords(reason, german)).not.toMatch(/\b(löse\w*|schieß|lass\w* los)\b/i);
    }
  }
});
