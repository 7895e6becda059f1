import { z } from 'zod';

/**
 * A day that a journal can hold: ISO 8601, of a year from 1900 to 2999. At the ends of what four digits can say, the ISO week of a day has no name.
 */
export const journalDaySchema = z.iso
  .date()
  .refine((day) => '1900' <= day && day < '3000', { error: 'Expected a day of a year from 1900 to 2999.' });
