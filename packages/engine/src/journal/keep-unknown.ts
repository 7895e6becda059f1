import * as z from 'zod';
import { journalStampSchema } from './journal-instant.ts';
import '../units/plain-parsers.ts';

/**
 * An object whose unknown keys are kept as they are, so that what a newer app has written goes back to it unchanged. Its type names the
 * known keys only: nothing here can use the others by mistake.
 * @param shape the known keys.
 * @returns the schema.
 */
export function keepUnknown<S extends z.core.$ZodShape>(shape: S): z.ZodObject<S> {
  return z.looseObject(shape) as unknown as z.ZodObject<S>;
}

/** What every row of a journal carries about its edits; stamps as of `stampAfter`. */
export const editShape = {
  /** When it was last changed, ISO 8601 UTC. */
  editedAt: journalStampSchema.optional(),
  /** Stamps of groups of fields that were not changed last, by group. */
  edits: z.record(z.string().max(64), journalStampSchema).optional(),
  /** When it was put back after a removal. */
  restoredAt: journalStampSchema.optional(),
  /** As version 1 said that a row was removed; a merge makes a mark of it. */
  removed: z.literal(true).optional(),
};
