import { describe, expect, it } from 'vitest';
import { builtInPrograms } from './built-in-programs.ts';
import { nextPrograms } from './next-programs.ts';
import type { Program } from './program.ts';

const called = (title: string): Program => builtInPrograms.find((program) => program.title === title)!;
const topHold = ({ blocks }: Program) =>
  Math.max(
    ...blocks.flatMap(({ hold, ladder }) => [
      hold,
      ...(ladder?.rungs ?? []).map((rung) => (rung.raise === 'hold' ? rung.until : 0)),
    ]),
  );
describe('the path between the built-in programs', () => {
  it('goes on from every program that can be outgrown, and from no test', () => {
    for (const program of builtInPrograms) {
      const isClimbed = program.blocks.some(({ ladder }) => ladder);
      if (isClimbed) expect(nextPrograms(program).length, program.title).toBeGreaterThan(0);
      if (program.kind === 'test') expect(nextPrograms(program)).toEqual([]);
      expect(new Set(nextPrograms(program)).size).toBe(nextPrograms(program).length);
      expect(nextPrograms(program)).not.toContain(program);
      for (const next of nextPrograms(program)) expect(next.kind).toBeUndefined();
    }
  });

  it('leads from the club starter and from the travel band to every program with holds on a bow', () => {
    for (const start of ['Club starter', 'Travel band']) {
      const reached = new Set([called(start)]);
      for (const program of reached) for (const next of nextPrograms(program)) reached.add(next);
      const titles = [...reached].map(({ title }) => title);
      expect(titles).toEqual(
        expect.arrayContaining(['Twenty holds', 'One set of ten', 'Holding', 'Laddered holding', 'Power']),
      );
    }
  });

  it('begins no longer a hold than half as long again as the last one ended with', () => {
    // Power is short holds for those who already do the long ones: nothing is grown out of there.
    for (const program of builtInPrograms.filter(({ title }) => title !== 'Power')) {
      for (const next of nextPrograms(program)) {
        expect(next.blocks[0]!.hold, `${program.title} to ${next.title}`).toBeLessThanOrEqual(topHold(program) * 1.5);
      }
    }
  });

  it('knows a program by its id, not by its name', () => {
    const first = builtInPrograms[0]!;
    expect(nextPrograms({ ...first, title: 'Mine' })).toEqual(nextPrograms(first));
    expect(nextPrograms({ ...first, id: '00000000-0000-4000-8000-000000000000' })).toEqual([]);
    expect(nextPrograms({ ...first, id: undefined })).toEqual([]);
  });
});
