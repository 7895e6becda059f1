import { say } from '@larkhold/words';

/**
 * Why cues may go unheard. `refused`: the browser has not let sound begin; `stalled`: sound began and stands still; `none`: there
 * is no sound here; `wordless`: tones are heard, spoken words are not.
 */
export interface CueTrouble {
  kind: 'refused' | 'stalled' | 'none' | 'wordless';
  /** Plain words for the archer: what happened and what to do next. */
  message: string;
}

/** Every trouble the player can be in, in the words the archer reads: of the language when they are read. */
export const cueTroubles: { readonly [Kind in CueTrouble['kind']]: CueTrouble & { readonly kind: Kind } } = {
  none: troubleOf('none', 'trouble.noSound'),
  refused: troubleOf('refused', 'trouble.soundRefused'),
  stalled: troubleOf('stalled', 'trouble.soundStalled'),
  wordless: troubleOf('wordless', 'trouble.wordless'),
};

type TroubleKey = 'trouble.noSound' | 'trouble.soundRefused' | 'trouble.soundStalled' | 'trouble.wordless';

function troubleOf<Kind extends CueTrouble['kind']>(kind: Kind, key: TroubleKey) {
  return {
    kind,
    get message() {
      return say(key);
    },
  };
}
