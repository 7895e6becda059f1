import * as z from 'zod';
import { copyReps } from './copy-reps.ts';
import { journalDaySchema } from './journal-day.ts';
import { journalIdSchema } from './journal-id.ts';
import { journalInstantSchema } from './journal-instant.ts';
import { editShape, keepUnknown } from './keep-unknown.ts';
import { type RepRecord, repRecordSchema } from './rep-record.ts';

export * from './rep-record.ts';

const repListSchema = z.array(repRecordSchema).max(20_000);

/** Stops at the first rep that is wrong: a file can hold millions of them. */
function readReps(found: unknown) {
  if (!Array.isArray(found)) return repListSchema.safeParse(found);
  const wrong = found.slice(0, 20_001).findIndex((rep) => !repRecordSchema.safeParse(rep).success);
  return repListSchema.safeParse(wrong < 0 ? found : found.slice(0, wrong + 1));
}

/** Ten years of drills hold a hundred thousand reps. Good ones are copied by hand; anything else goes through the schema, which says what is wrong and where. */
const repsSchema = z.unknown().transform((found, context): RepRecord[] => {
  const copied = copyReps(found);
  if (copied) return copied;
  const read = readReps(found);
  if (read.success) return read.data;
  context.issues.push(...read.error.issues.map((issue) => ({ ...issue, input: undefined })));
  return z.NEVER;
});

/** What one session leaves in the journal. */
export const drillRecordSchema = keepUnknown({
  id: journalIdSchema,
  /** The program's title as it was on the day. */
  program: z.string().min(1).max(120),
  /** The program file's id, where it has one. */
  programId: z.string().max(64).optional(),
  /** The archer's local day, ISO 8601. */
  date: journalDaySchema,
  /** Instants, ISO 8601 with offset. They stamp; nothing is computed from their difference. */
  startedAt: journalInstantSchema,
  endedAt: journalInstantSchema,
  reps: repsSchema,
  /** How hard it was, 0 to 10. */
  effort: z.number().min(0).max(10).optional(),
  /** Pain in a joint, or a sharp pain. Absent: not answered, which is not "none". */
  pain: z.boolean().optional(),
  /** A drill of a test program: never eased, and no failed drill when it ends early. */
  kind: z.literal('test').optional(),
  note: z.string().max(4000).optional(),
  /** Reps that were prescribed, done or not; absent in records that were typed in. */
  prescribedReps: z.int().min(0).optional(),
  /** The session's length on the monotonic clock, pauses left out. */
  durationMs: z.int().min(0).optional(),
  /** On-the-fingers weight on the day, pounds-force, added weight included. */
  onFingersLbf: z.number().min(0).max(200).optional(),
  tool: z.enum(['bow', 'light-bow', 'band', 'strap']).optional(),
  /** True while the session is still running: a crash leaves it so. */
  open: z.literal(true).optional(),
  ...editShape,
});
/** What one session leaves in the journal. */
export type DrillRecord = z.output<typeof drillRecordSchema>;
