/** What a cue sounds as: a tone, a spoken word, or a tone with the word after it. */
export type CueVoice = 'tones' | 'words' | 'both';

/** How cues sound. */
export interface CueSettings {
  /** Loudness, 0 (silent) to 1. */
  level: number;
  voice: CueVoice;
  /** Softer and lower, for a sleeping house. */
  quiet: boolean;
  /** The language that calls are written in, a BCP 47 tag: the device's own voice for them must speak it. */
  language: string;
}

/** What a player starts with when nothing is set. */
export const defaultCueSettings: Readonly<CueSettings> = { level: 0.8, voice: 'tones', quiet: false, language: 'en' };

/**
 * Settings with some of them changed.
 *
 * @param settings the settings as they are
 * @param changes what changes; a level outside 0..1 is a caller's error
 * @returns the new settings; the old ones are left as they were
 * @throws RangeError when the level is not between 0 and 1
 */
export function changeCueSettings(settings: Readonly<CueSettings>, changes: Partial<CueSettings>): CueSettings {
  const changed = { ...settings, ...changes };
  if (!(changed.level >= 0 && changed.level <= 1)) throw new RangeError(`level is ${changed.level}; it must be 0 to 1`);
  return changed;
}
