import { journalInstantSchema, type Prescription } from '@larkhold/engine';
import * as z from 'zod';

const isPrescription = (value: unknown): value is Prescription =>
  typeof value === 'object' && value !== null && 'blocks' in value && Array.isArray(value.blocks);

/** The drill under way, as it must survive a crash at any moment. */
export const runningDrillSchema = z.strictObject({
  /** The id of the record that its reps go to, where it has begun. */
  recordId: z.string().max(64).optional(),
  /** The program's title. */
  program: z.string().min(1).max(120),
  programId: z.string().max(64).optional(),
  /** The numbers it was laid out from; the same prescription gives the same timeline. */
  prescription: z.custom<Prescription>(isPrescription, 'expected a prescription'),
  /** The session's own snapshot, JSON. */
  snapshot: z.unknown(),
  /** ISO 8601 with offset. */
  startedAt: journalInstantSchema,
});
/** The drill under way, as stored for going on after a crash. */
export type RunningDrill = z.output<typeof runningDrillSchema>;
