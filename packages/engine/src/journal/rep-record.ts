import * as z from 'zod';
import type { Fault } from '../program/fault.ts';
import { faultSentences } from '../program/fault-sentences.ts';
import { keepUnknown } from './keep-unknown.ts';
import '../units/plain-parsers.ts';

/** How a rep ended. `unsure`: nobody can say, because time was lost while it ran. */
export const outcomeSchema = z.enum(['held', 'short', 'skipped', 'unsure']);
/** How a rep ended. */
export type Outcome = z.output<typeof outcomeSchema>;

/** Why a hold was let down early: the form went, the strength went, or something came between. */
export const whySchema = z.enum(['form', 'tired', 'interrupted']);
/** Why a hold was let down early. `form`: good sense, and says nothing of strength; `tired`: no more was left; `interrupted`: says nothing. */
export type Why = z.output<typeof whySchema>;

/** What can move in a hold: the draw elbow dropped, the bow shoulder came up, the draw crept forward. */
export const movedPartSchema = z.enum(['elbow', 'bowShoulder', 'creep']);
/** What can move in a hold: the draw elbow dropped, the bow shoulder came up, the draw crept forward. */
export type MovedPart = z.output<typeof movedPartSchema>;

/** A hold as a camera saw it, milliseconds from the moment at which the clock's hold began; before it is negative. */
export const seenSchema = keepUnknown({
  fromMs: z.int(),
  toMs: z.int(),
  /** What moved since the anchor; empty where nothing did. Absent: the form could not be judged. */
  moved: z.array(movedPartSchema).max(3).optional(),
  /** How long nothing had moved, milliseconds. Absent: the form could not be judged. */
  wholeMs: z.int().min(0).optional(),
}).refine(({ fromMs, toMs }) => fromMs <= toMs, {
  error: faultSentences['fault.seenBackwards'],
  params: { fault: { rule: 'seenBackwards' } satisfies Fault },
});
/** A hold as a camera saw it. */
export type Seen = z.output<typeof seenSchema>;

/** What is known of one rep. Indexes are 0-based, times milliseconds at full draw. */
export const repRecordSchema = keepUnknown({
  block: z.int().min(0),
  set: z.int().min(0),
  rep: z.int().min(0),
  hand: z.enum(['usual', 'opposite']),
  prescribedMs: z.int().min(0),
  heldMs: z.int().min(0),
  outcome: outcomeSchema,
  /** Of a short rep, where the archer said it. Absent: unknown. */
  why: whySchema.optional(),
  /** Weight added to the bow for this rep, pounds-force. Absent: unknown, as in records from before it was kept. */
  addedWeightLbf: z.number().min(0).max(60).optional(),
  /** The hold as it was seen, where it was. `heldMs` stays what the clock says. */
  seen: seenSchema.optional(),
});
/** What is known of one rep. Indexes are 0-based, times milliseconds at full draw. */
export type RepRecord = z.output<typeof repRecordSchema>;
