import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { disagreementMs, trueHeldMs } from '../journal/true-held-ms.ts';
import { createSession, type Session } from './create-session.ts';
import type { SeenForm } from './session-view.ts';
import {
  begun,
  DRAW_MS,
  FIRST_HOLD_MS,
  FIRST_REST_MS,
  HOLD_MS,
  held,
  LET_DOWN_MS,
  made,
  outcomes,
  READY_MS,
  REST_MS,
  send,
  start,
  timelineOf,
  walk,
} from './trial-session.ts';

const observe = (session: Session, seen: 'drawn' | 'letDown', atMs: number, nowMs: number) =>
  session.send({ type: 'observe', seen, atMs }, nowMs);
const seenOf = (session: Session) => session.record().reps.map(({ seen }) => seen);

/** Full draw seen half a second into the hold, told 1.2 s later. */
function seenDrawn(countFromAnchor = false, lateMs = 500): Session {
  const session = made(timelineOf(), { countFromAnchor });
  send(session, 'begin', 0);
  walk(session, 0, FIRST_HOLD_MS + lateMs + 1200);
  observe(session, 'drawn', FIRST_HOLD_MS + lateMs, FIRST_HOLD_MS + lateMs + 1200);
  return session;
}

describe('a witness', () => {
  it('[S24] ends a rep at the moment the draw gave way, with no press', () => {
    const session = seenDrawn();
    walk(session, FIRST_HOLD_MS + 1700, FIRST_HOLD_MS + 12_200);
    observe(session, 'letDown', FIRST_HOLD_MS + 12_000, FIRST_HOLD_MS + 12_200);
    expect(outcomes(session)).toEqual([[0, 0, 'short', 12_000]]);
    expect(seenOf(session)).toEqual([{ fromMs: 500, toMs: 12_000 }]);
    expect(session.view()).toMatchObject({ step: { kind: 'letDown' }, msLeft: LET_DOWN_MS - 200 });
  });

  it('[S24] that saw no full draw ends nothing', () => {
    const session = begun(FIRST_HOLD_MS + 5000);
    observe(session, 'letDown', FIRST_HOLD_MS + 4900, FIRST_HOLD_MS + 5000);
    expect(outcomes(session)).toEqual([]);
    expect(session.view().step?.kind).toBe('hold');
  });

  it('[S25] writes beside the rep what it saw; the clock’s own stays', () => {
    const session = seenDrawn();
    walk(session, FIRST_HOLD_MS + 1700, FIRST_HOLD_MS + HOLD_MS + 900);
    observe(session, 'letDown', FIRST_HOLD_MS + HOLD_MS + 700, FIRST_HOLD_MS + HOLD_MS + 900);
    expect(outcomes(session)).toEqual([held(0, 0)]);
    expect(seenOf(session)).toEqual([{ fromMs: 500, toMs: HOLD_MS + 700 }]);
  });

  it('[S25] that hears of a let-down too late changes no reported rep, but shows the difference', () => {
    const session = seenDrawn();
    walk(session, FIRST_HOLD_MS + 1700, FIRST_HOLD_MS + HOLD_MS + 100);
    observe(session, 'letDown', FIRST_HOLD_MS + HOLD_MS - 1000, FIRST_HOLD_MS + HOLD_MS + 100);
    expect(outcomes(session)).toEqual([held(0, 0)]);
    const [rep] = session.record().reps;
    if (rep === undefined) throw new Error('no rep');
    expect(trueHeldMs(rep)).toBe(HOLD_MS - 1500);
    expect(disagreementMs(rep)).toBe(-1500);
  });

  it('[S25] writes nothing of a hold that it lost, or that was paused', () => {
    const lost = seenDrawn();
    walk(lost, FIRST_HOLD_MS + 1700, FIRST_REST_MS + REST_MS + DRAW_MS + 100);
    // The next rep's draw has begun: a let-down from here on is another one's.
    observe(lost, 'letDown', FIRST_REST_MS + REST_MS + DRAW_MS, FIRST_REST_MS + REST_MS + DRAW_MS + 100);
    expect(seenOf(lost)).toEqual([undefined]);

    const paused = seenDrawn();
    send(paused, 'pause', FIRST_HOLD_MS + 3000);
    send(paused, 'resume', FIRST_HOLD_MS + 9000);
    observe(paused, 'letDown', FIRST_HOLD_MS + 9500, FIRST_HOLD_MS + 9600);
    expect(paused.record().reps).toEqual([]);
  });

  it('[S26] lets a slow draw count from its anchor, and a quick one too', () => {
    const slow = seenDrawn(true);
    walk(slow, FIRST_HOLD_MS + 1700, FIRST_HOLD_MS + HOLD_MS + 499);
    expect(slow.view().step?.kind).toBe('hold');
    slow.advance(FIRST_HOLD_MS + HOLD_MS + 500);
    expect(outcomes(slow)).toEqual([held(0, 0)]);

    const quick = made(timelineOf(), { countFromAnchor: true });
    send(quick, 'begin', 0);
    walk(quick, 0, READY_MS + 2500);
    observe(quick, 'drawn', READY_MS + 1300, READY_MS + 2500);
    expect(quick.view()).toMatchObject({ step: { kind: 'hold' }, msLeft: HOLD_MS - 1200 });
    walk(quick, READY_MS + 2500, READY_MS + 1300 + HOLD_MS);
    expect(outcomes(quick)).toEqual([held(0, 0)]);
  });

  it('[S26] counts from the anchor where the program says so', () => {
    const session = made(timelineOf({ countFrom: 'anchor' }));
    send(session, 'begin', 0);
    walk(session, 0, FIRST_HOLD_MS + 1700);
    observe(session, 'drawn', FIRST_HOLD_MS + 500, FIRST_HOLD_MS + 1700);
    const again = createSession({
      timeline: timelineOf({ countFrom: 'anchor' }),
      ...start,
      resumeFrom: session.snapshot(),
    });
    walk(again, FIRST_HOLD_MS + 1700, FIRST_HOLD_MS + HOLD_MS + 499);
    expect(again.view().step?.kind).toBe('hold');
    again.advance(FIRST_HOLD_MS + HOLD_MS + 500);
    expect(outcomes(again)).toEqual([held(0, 0)]);
  });

  it('[S26] never makes the drill wait: what is not seen is counted by the clock', () => {
    const session = made(timelineOf(), { countFromAnchor: true });
    send(session, 'begin', 0);
    walk(session, 0, FIRST_HOLD_MS + HOLD_MS);
    expect(outcomes(session)).toEqual([held(0, 0)]);
  });

  it('[S30] says what moved, and that the form was why, unless a reason was given', () => {
    const letDown = (form: SeenForm | undefined, press?: 'tired') => {
      const session = seenDrawn();
      walk(session, FIRST_HOLD_MS + 1700, FIRST_HOLD_MS + 12_000);
      if (press) session.send({ type: 'letDownNow', why: press }, FIRST_HOLD_MS + 12_000);
      session.send({ type: 'observe', seen: 'letDown', atMs: FIRST_HOLD_MS + 12_000, form }, FIRST_HOLD_MS + 12_200);
      const [rep] = session.record().reps;
      return rep;
    };
    expect(letDown({ moved: ['elbow'], wholeMs: 7000.4 })).toMatchObject({
      ...{ outcome: 'short', why: 'form' },
      seen: { fromMs: 500, toMs: 12_000, moved: ['elbow'], wholeMs: 7000 },
    });
    expect(letDown({ moved: ['elbow'], wholeMs: 7000 }, 'tired')).toMatchObject({ outcome: 'short', why: 'tired' });
    expect(letDown({ moved: [], wholeMs: 11_500 })).not.toHaveProperty('why');
    expect(letDown(undefined)?.seen).toEqual({ fromMs: 500, toMs: 12_000 });
  });

  it('[S30] gives no reason to a hold that was held to its end', () => {
    const session = seenDrawn();
    const endMs = FIRST_HOLD_MS + HOLD_MS;
    walk(session, FIRST_HOLD_MS + 1700, endMs + 700);
    const form = { moved: ['creep'], wholeMs: 4000 } as const;
    session.send({ type: 'observe', seen: 'letDown', atMs: endMs + 500, form }, endMs + 700);
    const [rep] = session.record().reps;
    expect(rep).toMatchObject({ outcome: 'held', seen: { moved: ['creep'], wholeMs: 4000 } });
    expect(rep).not.toHaveProperty('why');
  });

  it('a snapshot keeps what was seen, and refuses an instant that is no number', () => {
    const session = seenDrawn();
    const again = createSession({ timeline: timelineOf(), ...start, resumeFrom: session.snapshot() });
    walk(again, FIRST_HOLD_MS + 1700, FIRST_HOLD_MS + 12_000);
    observe(again, 'letDown', FIRST_HOLD_MS + 11_900, FIRST_HOLD_MS + 12_000);
    expect(seenOf(again)).toEqual([{ fromMs: 500, toMs: 11_900 }]);
    expect(() => observe(session, 'drawn', Number.NaN, FIRST_HOLD_MS + 2000)).toThrow(RangeError);
  });
});

it('whatever is seen, no rep is credited with more than the clock or the camera can vouch for', () => {
  const sight = fc.record({
    seen: fc.constantFrom('drawn' as const, 'letDown' as const),
    gapMs: fc.integer({ min: 50, max: 9000 }),
    lateMs: fc.integer({ min: 0, max: 3000 }),
  });
  fc.assert(
    fc.property(fc.array(sight, { maxLength: 40 }), fc.boolean(), (script, countFromAnchor) => {
      const session = made(timelineOf(), { countFromAnchor });
      send(session, 'begin', 0);
      let nowMs = 0;
      for (const { seen, gapMs, lateMs } of script) {
        walk(session, nowMs, nowMs + gapMs);
        nowMs += gapMs;
        observe(session, seen, Math.max(0, nowMs - lateMs), nowMs);
      }
      for (const rep of session.record().reps) {
        expect(rep.heldMs).toBeLessThanOrEqual(rep.prescribedMs);
        expect(trueHeldMs(rep)).toBeLessThanOrEqual(rep.prescribedMs);
        if (rep.outcome === 'short') expect(rep.heldMs).toBeLessThanOrEqual(rep.prescribedMs);
        if (rep.seen) expect(rep.seen.toMs).toBeGreaterThanOrEqual(rep.seen.fromMs);
      }
      const { state } = session.view();
      expect(['running', 'done']).toContain(state);
    }),
    { seed: 14, numRuns: 300 },
  );
});
