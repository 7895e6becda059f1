import { builtInPrograms, type Prescription, prescribe } from '@larkhold/engine';
import { describe, expect, it } from 'vitest';
import { doseLine, lengthLine, type NumberPiece, type Piece, restLine, whySentences } from './block-numbers.ts';

const today = '2026-11-25';
const all = builtInPrograms.map((program) => prescribe({ program, records: [], today }));
const of = (title: string): Prescription => all.find(({ programTitle }) => programTitle === title)!;
const read = (pieces: readonly Piece[]): string =>
  pieces
    .map((piece) => (typeof piece === 'string' ? piece : piece.text))
    .join('')
    .replaceAll('\u00a0', ' ');
const numbersOf = (pieces: readonly Piece[]): NumberPiece[] => pieces.filter((piece) => typeof piece !== 'string');
const linesOf = (prescription: Prescription): Piece[] => [
  ...prescription.blocks.flatMap((block) => [...doseLine(block), ...restLine(block, 'metric')]),
  ...lengthLine(prescription),
];

describe('a line of numbers', () => {
  // K. Lee, "SPT" text, as the built-in program's source says: 30 s, rest of 2 x hold, 10 reps, 120 s between sets.
  it('reads as archers write', () => {
    const [block] = of('Holding').blocks;
    expect(read(doseLine(block!))).toMatch(/^2 × 10 × 30 s$/);
    expect(read(restLine(block!, 'metric'))).toBe('rest 60 s, 120 s between sets');
  });

  it('has a button name and reasons for every number of every built-in program', () => {
    for (const prescription of all) {
      for (const piece of numbersOf(linesOf(prescription))) {
        expect(piece.why).toMatch(/^Why .+\?$/);
        const sentences = whySentences(prescription, piece);
        expect(sentences.length).toBeGreaterThan(1);
        for (const sentence of sentences) expect(sentence).toMatch(/^[A-Z0-9].*[.?!]$/);
      }
    }
  });

  it('leaves no figure outside a button', () => {
    for (const prescription of all) {
      const words = linesOf(prescription).filter((piece) => typeof piece === 'string');
      expect(words.join('')).not.toMatch(/\d/);
    }
  });

  it('names the hold as it is shown', () => {
    const hold = numbersOf(doseLine(of('Club starter').blocks[0]!)).find(({ number }) => number === 'hold');
    expect(hold?.why).toBe('Why 5 s?');
  });
});
