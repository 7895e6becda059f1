import * as z from 'zod';
import type { Fault } from '../program/fault.ts';
import { faultSentences } from '../program/fault-sentences.ts';
import { mondayOfWeek } from '../units/iso-weeks.ts';

/**
 * A day that a journal can hold: ISO 8601, of a year from 1900 to 2999. At the ends of what four digits can say, the ISO week of a day has no name.
 */
export const journalDaySchema = z.iso.date().refine((day) => '1900' <= day && day < '3000', {
  error: faultSentences['fault.dayYears'],
  params: { fault: { rule: 'dayYears' } satisfies Fault },
});

/** An ISO week that a journal can hold: one that its year has, from 1900 to 2999. */
export const journalWeekSchema = z
  .string()
  .refine((week) => '1900' <= week && week < '3000' && mondayOfWeek(week) !== undefined, {
    error: faultSentences['fault.weekYears'],
    params: { fault: { rule: 'weekYears' } satisfies Fault },
  });
