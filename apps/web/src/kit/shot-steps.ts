/** Steps of a shot process, or why they can't be kept. */
export type ReadSteps = { ok: true; steps: string[] } | { ok: false; message: string };

/** What the kit takes. */
const mostSteps = 20;
const longestStep = 80;

/**
 * Reads a shot process as it is typed: one step on each line. Empty lines are passed over.
 * @param text what was typed
 * @returns the steps in order, or what is wrong with them
 */
export function readSteps(text: string): ReadSteps {
  const steps = text
    .split(/\r\n?|\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '');
  if (steps.length > mostSteps)
    return { ok: false, message: say('kit.tooManySteps', { n: steps.length, most: mostSteps }) };
  const long = steps.findIndex((step) => step.length > longestStep);
  if (long >= 0) return { ok: false, message: say('kit.stepTooLong', { n: long + 1, most: longestStep }) };
  return { ok: true, steps };
}

import { say } from '@larkhold/words';
