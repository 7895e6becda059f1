import { builtInPrograms, createSession, type DrillRecord, layOut, prescribe } from '@larkhold/engine';
import type { RunningDrill } from '@larkhold/store';
import { describe, expect, it } from 'vitest';
import { closeInterrupted } from './close-interrupted.ts';

const [program] = builtInPrograms;
if (!program) throw new TypeError('no built-in program');
const prescription = prescribe({ program, records: [], today: '2026-11-25' });
const timeline = layOut(prescription);

/** A drill that was cut off at a moment, as the store keeps it. */
function cutOffAt(atMs: number): { running: RunningDrill; stored: DrillRecord } {
  const session = createSession({
    timeline,
    program: program?.title ?? '',
    startedAt: '2026-11-25T06:30:00+01:00',
    newId: () => 'id-1',
  });
  session.send({ type: 'begin' }, 0);
  for (let nowMs = 0; nowMs <= atMs; nowMs += 1000) session.advance(nowMs);
  const running: RunningDrill = {
    ...{ recordId: 'id-1', program: program?.title ?? '', prescription },
    ...{ snapshot: session.snapshot(), startedAt: '2026-11-25T06:30:00+01:00' },
  };
  return { running, stored: { ...session.record(), tool: 'bow' } };
}

const holds = timeline.steps.filter(({ kind }) => kind === 'hold');
const inSecondHold = (holds[1]?.startMs ?? 0) + 2000;

describe('a drill that was cut off, closed', () => {
  it('keeps the reps that ended, and the running one as unsure', () => {
    const { running, stored } = cutOffAt(inSecondHold);
    const closed = closeInterrupted(running, stored);
    expect(closed?.reps.map(({ outcome }) => outcome)).toEqual(['held', 'unsure']);
    expect(closed?.open).toBeUndefined();
    expect(closed?.tool).toBe('bow');
  });

  it('leaves a rep that was put right as the archer put it', () => {
    const { running, stored } = cutOffAt(inSecondHold);
    const reps = stored.reps.map((rep) => ({ ...rep, outcome: 'short' as const }));
    expect(closeInterrupted(running, { ...stored, reps })?.reps.map(({ outcome }) => outcome)).toEqual([
      'short',
      'unsure',
    ]);
  });

  it('is nothing where no rep had begun, and unsure alone where the first was under way', () => {
    expect(closeInterrupted(cutOffAt(2000).running, undefined)).toBeUndefined();
    const { running } = cutOffAt((holds[0]?.startMs ?? 0) + 1000);
    expect(closeInterrupted(running, undefined)?.reps.map(({ outcome }) => outcome)).toEqual(['unsure']);
  });

  it('keeps what was written where the snapshot can no longer be read', () => {
    const { running, stored } = cutOffAt(inSecondHold);
    const closed = closeInterrupted({ ...running, snapshot: { version: 9 } }, stored);
    expect(closed).toEqual({ ...stored, open: undefined });
  });

  it('keeps what was written where the snapshot can be read but tells of no drill that could be kept', () => {
    const { running, stored } = cutOffAt(inSecondHold);
    const nameless = { ...(running.snapshot as object), id: '' };
    expect(closeInterrupted({ ...running, snapshot: nameless }, stored)).toEqual({ ...stored, open: undefined });
    expect(closeInterrupted({ ...running, snapshot: nameless }, undefined)).toBeUndefined();
  });
});
