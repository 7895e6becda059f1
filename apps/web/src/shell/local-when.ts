import { withoutDevice } from '@larkhold/engine';
import { formatLocalInstant } from '@larkhold/runner';

/**
 * An instant as this device's clock shows it.
 * @param instant ISO 8601, perhaps with a device's name
 * @returns the day and the instant with the local offset, as messages take them
 */
export function localWhen(instant: string): { day: string; at: string } {
  const at = formatLocalInstant(new Date(withoutDevice(instant)));
  return { day: at.slice(0, 10), at };
}
