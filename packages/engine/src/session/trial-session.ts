import type { PrescribedBlock } from '../prescription/prescription.ts';
import { layOut } from '../timeline/lay-out.ts';
import type { Timeline } from '../timeline/timeline.ts';
import { createSession, type Session, type SessionInput } from './create-session.ts';
import type { SessionEvent } from './session-view.ts';

// A small session that the tests of this room walk. Its numbers are made up; no two lengths are alike, so that none is mistaken for another.

/** From the rules of SPEC.md, written out so that a test does not expect what the code says, milliseconds. */
export const READY_MS = 10_000;
export const MORE_REST_MS = 30_000;
export const GAP_LIMIT_MS = 5_000;
/** When the end of a rest is announced, before it is over, milliseconds. */
export const REST_OVER_MS = 5_000;

/** Lengths, milliseconds; the last two are the moments at which the first hold and the first rest begin. */
export const DRAW_MS = 3000;
export const HOLD_MS = 30_000;
export const LET_DOWN_MS = 2000;
export const REST_MS = 60_000;
export const SET_REST_MS = 120_000;
export const REP_MS = DRAW_MS + HOLD_MS + LET_DOWN_MS;
export const FIRST_HOLD_MS = READY_MS + DRAW_MS;
export const FIRST_REST_MS = READY_MS + REP_MS;

/** Two sets of two reps, so that every kind of step and every neighbourhood occurs. */
export function timelineOf(change: Partial<PrescribedBlock> = {}): Timeline {
  const block: PrescribedBlock = {
    block: 0,
    title: 'Holds',
    drill: 'holding',
    sets: 2,
    reps: 2,
    drawMs: DRAW_MS,
    holdMs: HOLD_MS,
    letDownMs: LET_DOWN_MS,
    restMs: REST_MS,
    setRestMs: SET_REST_MS,
    letDownTo: 'rest',
    hand: 'usual',
    addedWeightLbf: 0,
    ...change,
  };
  return layOut({ programTitle: 'T', date: '2026-11-25', blocks: [block], reasons: [], cautions: [], durationMs: 0 });
}

/** What a session needs beside its timeline. */
export const start = { program: 'Weekday holding', startedAt: '2026-11-25T06:30:00+01:00', newId: () => 'id-1' };

/** A session of a timeline, not begun. */
export function made(timeline = timelineOf(), extra: Partial<SessionInput> = {}): Session {
  return createSession({ timeline, ...start, ...extra });
}

/** A session begun at 0 and walked to a moment in steps that lose nothing. */
export function begun(toMs: number, timeline = timelineOf()): Session {
  const session = made(timeline);
  session.send({ type: 'begin' }, 0);
  walk(session, 0, toMs);
  return session;
}

/** Walks from one moment to another in steps that lose nothing. */
export function walk(session: Session, fromMs: number, toMs: number) {
  for (let atMs = fromMs; atMs < toMs; atMs += 1000) session.advance(atMs);
  session.advance(toMs);
}

/** Sends an event by its name. */
export const send = (session: Session, type: SessionEvent['type'], atMs: number) => session.send({ type }, atMs);
/** Set, rep, outcome and milliseconds held of every rep that ended. */
export const outcomes = (session: Session) =>
  session.record().reps.map((rep) => [rep.set, rep.rep, rep.outcome, rep.heldMs]);
/** A rep held in full, as `outcomes` gives it. */
export const held = (set: number, rep: number) => [set, rep, 'held', HOLD_MS];
