import type { SpokenAmount } from '@larkhold/engine';
import type { DrawHand } from './bow-paths.ts';
import type { Viewing } from './legibility.ts';

/** What an archer can do with a key. */
export type KeyAction = 'begin' | 'pause' | 'letDownNow' | 'skipRep' | 'moreRest';

/** How the display is coloured: `system` follows the device. */
export type RunnerTheme = 'system' | 'dark' | 'light' | 'contrast';

/** How a drill is shown, heard and steered. */
export interface RunnerSettings {
  /** 0 (none) to 1 (full). */
  soundLevel: number;
  voice: 'tones' | 'words' | 'both';
  quiet: boolean;
  /** How much is said beside the steps; `usual` where left out. */
  spoken?: SpokenAmount;
  /** The warm-up's lines come first, said one by one; each stays until the archer goes on. */
  saysWarmUp?: boolean;
  /** Turns the picture over, to be read in a mirror. */
  flipped: boolean;
  /** What the display gives its room to; the bow where left out. */
  layout?: 'bow' | 'numbers';
  /** The hand that draws. */
  hand: DrawHand;
  theme: RunnerTheme;
  /** `KeyboardEvent.code` values, and codes of press sources ('Gamepad:0', 'Clap'). A code both in `begin` and in `pause` steers alone: it lets down while drawing or holding. */
  keys: Record<KeyAction, readonly string[]> & { stop?: readonly string[]; lessRest?: readonly string[] };
  /** The archer's own lines, said in blocks that ask for them. */
  shotProcess: readonly string[];
  /** Lines that the archer has seen in full and allowed to be said at full draw; see `layOut`. None where left out. */
  allowedCalls?: readonly string[];
  /** From where the archer reads the display; a number too small for that is announced before the drill. */
  viewing?: Viewing;
  /** A CSS pixel on this device, millimetres, where the archer has measured it. */
  pixelMm?: number;
  /** A hold counts from the moment at which a witness saw full draw, where one did. */
  countFromAnchor?: boolean;
  /** Takes the whole screen while the drill runs, where the browser allows it. */
  fullScreen?: boolean;
}

/** What a drill is run with when nothing is set. */
export const defaultRunnerSettings: Readonly<RunnerSettings> = {
  soundLevel: 0.7,
  voice: 'both',
  quiet: false,
  flipped: false,
  hand: 'right',
  theme: 'system',
  keys: {
    begin: ['Space', 'Enter', 'PageDown'],
    pause: ['Space', 'KeyP', 'PageDown'],
    letDownNow: ['ArrowDown', 'KeyL'],
    skipRep: ['ArrowRight', 'KeyN'],
    moreRest: ['ArrowUp', 'KeyR', 'PageUp'],
    lessRest: ['ArrowLeft', 'KeyC'],
  },
  shotProcess: [],
};
