// What is said when in three built-in programs. The lists were worked out from the timeline's rules (docs/cues.md), not by its code:
// 10 s to get ready; each step's word at its beginning; half of a hold of 10 s or more; three, two, one before the end of a hold of 5 s or
// more; the archer called 5 s before the end of a rest of 10 s or more, and told which rep comes; marks in a rest of a minute or more; calls spread evenly over the hold; no rest after the last let-down.
// Club starter by hand: 10 + 5 reps of 3 + 5 + 3 s + 4 rests of 20 s = 145 s. Power: 10 + 15 x 7 + 2 x 180 = 475 s.
// Flexibility: 10 + 30 x 16 + 25 x 30 + 4 x 120 = 1720 s.
import { readFileSync } from 'node:fs';
import { builtInPrograms, type Cue, layOut, prescribe } from '@larkhold/engine';
import { describe, expect, it } from 'vitest';

const cuesOf = (title: string) => {
  const program = builtInPrograms.find((one) => one.title === title);
  if (!program) throw new RangeError(`there is no program ${title}`);
  return layOut(prescribe({ program, records: [], today: '2026-11-25' })).cues;
};

function line({ atMs, kind, words }: Cue): string {
  const minutes = String(Math.floor(atMs / 60_000)).padStart(2, '0');
  return `${minutes}:${((atMs % 60_000) / 1000).toFixed(3).padStart(6, '0')} ${kind} ${words}`;
}

describe('golden cue lists', () => {
  it.each([
    ['Club starter', 'club-starter', 145],
    ['Power', 'power', 475],
    ['Flexibility', 'flexibility', 1720],
  ])('%s', (title, file, seconds) => {
    const golden = readFileSync(new URL(`../fixtures/cues/${file}.txt`, import.meta.url), 'utf8');
    const cues = cuesOf(title);
    expect(`${cues.map(line).join('\n')}\n`).toBe(golden);
    expect(cues.at(-1)?.atMs).toBe(seconds * 1000);
  });
});
