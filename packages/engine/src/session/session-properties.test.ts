import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PrescribedBlock } from '../prescription/prescription.ts';
import { layOut } from '../timeline/lay-out.ts';
import type { Timeline } from '../timeline/timeline.ts';
import { createSession, type Session } from './create-session.ts';
import type { SessionSnapshot } from './session-snapshot.ts';
import type { SessionEvent } from './session-view.ts';
import { GAP_LIMIT_MS } from './trial-session.ts';

/** What one archer does in one session: the time that passes, then what is asked for. */
type Script = { waitMs: number; type: SessionEvent['type'] | 'nothing' }[];

const shortMs = fc.integer({ min: 1, max: 12_000 });
const restMs = fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 40_000 }));

const anyTimeline: fc.Arbitrary<Timeline> = fc
  .array(
    fc.record({
      sets: fc.integer({ min: 1, max: 3 }),
      reps: fc.integer({ min: 1, max: 3 }),
      drawMs: shortMs,
      holdMs: shortMs,
      letDownMs: shortMs,
      restMs,
      setRestMs: restMs,
      hand: fc.constantFrom<PrescribedBlock['hand']>('usual', 'both'),
      letDownTo: fc.constantFrom<PrescribedBlock['letDownTo']>('rest', 'set-up'),
    }),
    { minLength: 1, maxLength: 2 },
  )
  .map((drills) => {
    const blocks = drills.map((drill, block): PrescribedBlock => {
      return { block, title: 'Holds', drill: 'holding', addedWeightLbf: 0, ...drill };
    });
    return layOut({ programTitle: 'T', date: '2026-11-25', blocks, reasons: [], cautions: [], durationMs: 0 });
  });

const asked: Script[number]['type'][] = ['letDownNow', 'skipRep', 'moreRest', 'lessRest', 'pause', 'resume', 'nothing'];

function anyScript(...more: Script[number]['type'][]): fc.Arbitrary<Script> {
  const type = fc.constantFrom(...asked, 'resume' as const, ...more);
  return fc.array(fc.record({ waitMs: fc.integer({ min: 0, max: 30_000 }), type }), { maxLength: 25 });
}

function made(timeline: Timeline, resumeFrom?: SessionSnapshot): Session {
  return createSession({
    timeline,
    program: 'Weekday holding',
    startedAt: '2026-11-25T06:30:00+01:00',
    newId: () => 'id-1',
    resumeFrom,
  });
}

/** Walks in the given pieces, again and again, none later than the gap limit. */
function walk(session: Session, fromMs: number, toMs: number, piecesMs: readonly number[]) {
  let atMs = fromMs;
  for (let index = 0; atMs < toMs; index++) {
    atMs = Math.min(toMs, atMs + (piecesMs[index % piecesMs.length] ?? GAP_LIMIT_MS));
    session.advance(atMs);
  }
}

/** Plays a script; `after` sees the session, and may give another one to go on with, after each line. */
function play(
  session: Session,
  script: Script,
  piecesMs: readonly number[],
  after: (session: Session, nowMs: number) => Session | undefined = () => undefined,
): Session {
  let current = session;
  let nowMs = 1000;
  current.send({ type: 'begin' }, nowMs);
  for (const { waitMs, type } of script) {
    walk(current, nowMs, nowMs + waitMs, piecesMs);
    nowMs += waitMs;
    if (type !== 'nothing') current.send({ type }, nowMs);
    current = after(current, nowMs) ?? current;
  }
  current.send({ type: 'resume' }, nowMs);
  walk(current, nowMs, nowMs + 2_000_000, [GAP_LIMIT_MS]);
  after(current, nowMs + 2_000_000);
  return current;
}

const anyPieces = fc.array(fc.integer({ min: 1, max: GAP_LIMIT_MS }), { minLength: 3, maxLength: 12 });

describe('whatever the archer does', () => {
  it('[S4] any cutting of time gives the same reps and the same view', () => {
    fc.assert(
      fc.property(anyTimeline, anyScript(), anyPieces, anyPieces, (timeline, script, some, others) => {
        const trace = (piecesMs: readonly number[]) => {
          const seen: unknown[] = [];
          play(made(timeline), script, piecesMs, (session) => void seen.push(session.view(), session.record()));
          return seen;
        };
        expect(trace(others)).toEqual(trace(some));
      }),
      { seed: 4, numRuns: 150 },
    );
  });

  it('[S11] a pause only inserts time', () => {
    const script = anyScript().map((lines) => lines.filter(({ type }) => type !== 'pause' && type !== 'resume'));
    fc.assert(
      fc.property(anyTimeline, script, fc.nat(25), shortMs, shortMs, (timeline, lines, place, beforeMs, pauseMs) => {
        const still: Script = [...lines.slice(0, place), { waitMs: beforeMs, type: 'nothing' }, ...lines.slice(place)];
        const paused: Script = still.flatMap((line, index): Script => {
          const isPause = index === Math.min(place, lines.length);
          return isPause
            ? [
                { ...line, type: 'pause' },
                { waitMs: pauseMs, type: 'resume' },
              ]
            : [line];
        });
        const [plain, rested] = [still, paused].map((each) => play(made(timeline), each, [1000]).record());
        expect(rested?.reps).toEqual(plain?.reps);
        expect(rested?.durationMs).toBe(plain?.durationMs);
      }),
      { seed: 11, numRuns: 150 },
    );
  });

  it('[S18] a session restored at any instant equals one that was never stopped', () => {
    fc.assert(
      fc.property(anyTimeline, anyScript('gap', 'stop'), anyPieces, (timeline, script, piecesMs) => {
        const trace = (restores: boolean) => {
          const seen: unknown[] = [];
          play(made(timeline), script, piecesMs, (session) => {
            const kept = session.snapshot();
            const read = JSON.parse(JSON.stringify(kept)) as SessionSnapshot;
            expect(read).toStrictEqual(kept);
            const next = restores ? made(timeline, read) : session;
            seen.push(next.view(), next.record(), next.snapshot(), next.nextDeadlineMs());
            return next;
          });
          return seen;
        };
        expect(trace(true)).toEqual(trace(false));
      }),
      { seed: 18, numRuns: 150 },
    );
  });

  it('[S3] [S12] reps are reported once and in order, and no more is held than was lived', () => {
    fc.assert(
      fc.property(anyTimeline, anyScript('gap', 'stop'), anyPieces, (timeline, script, piecesMs) => {
        const places = timeline.steps
          .filter((step) => step.kind === 'draw')
          .map(({ block, set, rep }) => `${block}.${set}.${rep}`);
        const session = made(timeline);
        const told: unknown[] = [];
        session.onRep((rep) => told.push(rep));
        play(session, script, piecesMs, (running) => {
          const record = running.record();
          expect(record.reps.map(({ block, set, rep }) => `${block}.${set}.${rep}`)).toEqual(
            places.slice(0, record.reps.length),
          );
          const heldMs = record.reps.reduce((sumMs, rep) => sumMs + rep.heldMs, 0);
          expect(heldMs).toBeLessThanOrEqual(record.durationMs ?? 0);
          return undefined;
        });
        expect(told).toEqual(session.record().reps);
        const { state } = session.view();
        expect(['done', 'stopped']).toContain(state);
        if (state === 'done') expect(told).toHaveLength(places.length);
      }),
      { seed: 3, numRuns: 200 },
    );
  });

  it('[S21] cues from the offset on are due from now on, and in a wait none of another step comes before the draw', () => {
    const waiting = ['ready', 'rest', 'setRest'];
    fc.assert(
      fc.property(anyTimeline, anyScript('gap'), anyPieces, (timeline, script, piecesMs) => {
        play(made(timeline), script, piecesMs, (session, nowMs) => {
          const { state, step, next, originMs = 0, offsetMs, msLeft } = session.view();
          if (state !== 'running' || step === undefined) return undefined;
          const coming = timeline.cues.filter((cue) => cue.atMs >= offsetMs);
          for (const cue of coming) expect(originMs + cue.atMs).toBeGreaterThanOrEqual(nowMs);
          if (!waiting.includes(step.kind)) return undefined;
          const before = coming.filter((cue) => cue.atMs < (next?.startMs ?? 0)).map((cue) => cue.kind);
          expect([...waiting, 'restOver']).toEqual(expect.arrayContaining(before));
          expect(next?.kind).toBe('draw');
          expect(originMs + (next?.startMs ?? 0)).toBe(nowMs + msLeft);
          return undefined;
        });
      }),
      { seed: 21, numRuns: 200 },
    );
  });
});
