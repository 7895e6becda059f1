import { RefusedValueError } from '@larkhold/store';
import { say } from '@larkhold/words';
import type { Refusal } from './app-context.ts';

/**
 * What went wrong, and what the archer can do about it.
 * @param error whatever was thrown
 * @returns a value that the store refused, or a fault of Larkhold's own
 */
export function refusalOf(error: unknown): Refusal {
  if (error instanceof RefusedValueError) return { thing: error.thing, message: error.message };
  const reason = error instanceof Error ? error.message : String(error);
  return {
    thing: 'fault',
    message: say('app.fault', { reason }),
  };
}
