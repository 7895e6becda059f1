import type { RunnerSettings } from '@larkhold/runner';
import type { Kit } from '@larkhold/store';

/**
 * What the runner needs of the kit.
 * @param kit the archer's
 * @returns the runner's settings
 */
export function runnerSettingsOf(kit: Kit): RunnerSettings {
  const { soundLevel, voice, quiet, viewing, hand, theme, keys, shotProcess } = kit;
  return { soundLevel, voice, quiet, flipped: viewing.flipped, hand, theme, keys, shotProcess };
}
