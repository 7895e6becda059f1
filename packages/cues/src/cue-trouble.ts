/**
 * Why cues may go unheard. `refused`: the browser has not let sound begin; `stalled`: sound began and stands still; `none`: there
 * is no sound here; `wordless`: tones are heard, spoken words are not.
 */
export interface CueTrouble {
  kind: 'refused' | 'stalled' | 'none' | 'wordless';
  /** Plain words for the archer: what happened and what to do next. */
  message: string;
}

/** Every trouble the player can be in, in the words the archer reads. */
export const cueTroubles = {
  none: { kind: 'none', message: 'This device has no sound. Follow the screen.' },
  refused: {
    kind: 'refused',
    message: 'The browser holds the sound back. Press anything to let it begin; until then follow the screen.',
  },
  stalled: {
    kind: 'stalled',
    message: 'The sound stands still. Follow the screen; it comes back by itself when it can.',
  },
  wordless: { kind: 'wordless', message: 'The spoken words did not load. Tones sound in their place.' },
} as const satisfies Record<string, CueTrouble>;
