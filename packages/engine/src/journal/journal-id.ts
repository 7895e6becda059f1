import * as z from 'zod';

/**
 * An id that a journal can hold: 1 to 64 characters of whole text. Half of a pair of surrogates can be in no address and no file, so a page
 * that names the entry could not be shown.
 */
export const journalIdSchema = z
  .string()
  .min(1)
  .max(64)
  .refine((id) => !/\p{Surrogate}/u.test(id), { error: 'Expected whole characters; found half of one.' });
