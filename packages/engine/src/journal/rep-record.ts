import { z } from 'zod';
import { keepUnknown } from './keep-unknown.ts';

/** How a rep ended. `unsure`: nobody can say, because time was lost while it ran. */
export const outcomeSchema = z.enum(['held', 'short', 'skipped', 'unsure']);
/** How a rep ended. */
export type Outcome = z.output<typeof outcomeSchema>;

/** What is known of one rep. Indexes are 0-based, times milliseconds at full draw. */
export const repRecordSchema = keepUnknown({
  block: z.int().min(0),
  set: z.int().min(0),
  rep: z.int().min(0),
  hand: z.enum(['usual', 'opposite']),
  prescribedMs: z.int().min(0),
  heldMs: z.int().min(0),
  outcome: outcomeSchema,
});
/** What is known of one rep. Indexes are 0-based, times milliseconds at full draw. */
export type RepRecord = z.output<typeof repRecordSchema>;
