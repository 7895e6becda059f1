import * as z from 'zod';
import { drillRecordSchema, repRecordSchema } from '../journal/drill-record.ts';
import { journalInstantSchema } from '../journal/journal-instant.ts';
import type { SessionView } from './session-view.ts';
import type { Walk } from './walk.ts';
import '../units/plain-parsers.ts';

/** A session at one moment, as plain JSON: stored after every rep, it survives a crash. The timeline is stored beside it by the caller. */
export interface SessionSnapshot {
  version: 1;
  id: string;
  program: string;
  programId?: string;
  startedAt: string;
  /** The timeline it belongs to, recognised by its length. */
  timelineMs: number;
  stepCount: number;
  state: SessionView['state'];
  walk: Walk;
  ledger: Ledger;
}

/** Where the clock is and what has passed on it, milliseconds. */
export interface Ledger {
  /** The last moment at which the session was given the time; absent before it begins. */
  seenMs?: number;
  /** When the step under way or the last event began, whichever is later: nothing may be dated before it. */
  sinceMs?: number;
  /** All time since it began, pauses included. */
  elapsedMs: number;
  /** Time in which it ran, pauses left out. */
  livedMs: number;
}

const index = z.int().min(0);

const stepSchema = z.strictObject({
  kind: z.enum(['ready', 'draw', 'hold', 'letDown', 'rest', 'setRest']),
  startMs: z.number(),
  durationMs: z.number().min(0),
  block: index,
  set: index,
  rep: index,
  hand: z.enum(['usual', 'opposite']),
  countFrom: z.literal('anchor').optional(),
  to: z.literal('set-up').optional(),
});

/** Recognises a stored snapshot. Check what comes out of storage with it before a session is made of it. */
export const sessionSnapshotSchema: z.ZodType<SessionSnapshot> = z.strictObject({
  version: z.literal(1),
  id: drillRecordSchema.shape.id,
  program: drillRecordSchema.shape.program,
  programId: drillRecordSchema.shape.programId,
  startedAt: journalInstantSchema,
  timelineMs: z.number().min(0),
  stepCount: index,
  state: z.enum(['waiting', 'running', 'paused', 'done', 'stopped']),
  walk: z.strictObject({
    step: stepSchema.optional(),
    nextIndex: index,
    stepMs: z.number().min(0),
    dueAtMs: z.number(),
    leftMs: z.number(),
    floorMs: z.number(),
    pausedBy: z.enum(['archer', 'gap']).optional(),
    reps: z.array(repRecordSchema),
    holdAtMs: z.number().optional(),
    drawnAtMs: z.number().optional(),
  }),
  ledger: z.strictObject({
    seenMs: z.number().optional(),
    sinceMs: z.number().optional(),
    elapsedMs: z.number().min(0),
    livedMs: z.number().min(0),
  }),
});
