import { keepUnknown, spokenAmounts } from '@larkhold/engine';
import { languageTags } from '@larkhold/words';
import * as z from 'zod';

/** More programs than anybody drills; the answers to the oldest are asked for again. */
export const MOST_CALL_ANSWERS = 200;

const callLines = z.array(z.string().min(1).max(80)).max(300);
const ratio = z.number().min(0).max(1);
const codes = (usual: string[]) => z.array(z.string().min(1).max(40)).max(12).default(usual);

/**
 * What an archer can do without a hand on the screen: `KeyboardEvent.code` values, as most pedals and page turners send keys, and codes of
 * other presses ('Gamepad:0', 'Headset:next', 'Clap').
 */
export const keysSchema = z.strictObject({
  begin: codes(['Space', 'Enter', 'PageDown']),
  pause: codes(['Space', 'KeyP', 'PageDown']),
  letDownNow: codes(['ArrowDown', 'KeyL']),
  skipRep: codes(['ArrowRight', 'KeyN']),
  moreRest: codes(['ArrowUp', 'KeyR', 'PageUp']),
  lessRest: codes(['ArrowLeft', 'KeyC']),
  /** Beside Escape, which always asks whether to stop. */
  stop: codes([]),
});

/** The archer's kit: bow, sound, display, controls. Every value has a default, so a first run needs no set-up. */
export const kitSchema = keepUnknown({
  bow: z.enum(['recurve', 'compound', 'barebow', 'longbow']).default('recurve'),
  /** The hand that draws is the right of a right-handed archer. */
  hand: z.enum(['right', 'left']).default('right'),
  /** On the fingers, pounds-force. */
  drawWeightLbf: z.number().min(1).max(120).optional(),
  /** Inches, as bows are sold. */
  drawLengthIn: z.number().min(10).max(40).optional(),
  /** Decides cautions only. */
  ageBand: z.enum(['under 12', '12 to 15', '16 to 17', '18 to 49', '50 and over']).optional(),
  units: z.enum(['metric', 'imperial']).default('metric'),
  /** 0 (none) to 1 (full). */
  soundLevel: ratio.default(0.7),
  voice: z.enum(['tones', 'words', 'both']).default('both'),
  /** Soft, low tones and a brightening of the display: for thin walls and early mornings. */
  quiet: z.boolean().default(false),
  /** How much is said in a drill. */
  spoken: z.enum(spokenAmounts).default('usual'),
  /** The warm-up's lines come before a drill, one by one. */
  saysWarmUp: z.boolean().default(false),
  /** How the archer looks at the display: from how far, by a mirror or not, and if the picture is turned over for it. */
  viewing: z
    .strictObject({
      /** Eye to screen; by a mirror eye to mirror. */
      distanceM: z.number().min(0.3).max(20).default(2),
      byMirror: z.boolean().default(false),
      /** Mirror back to screen; counts only where the archer looks by a mirror. */
      mirrorToScreenM: z.number().min(0.1).max(20).default(1),
      flipped: z.boolean().default(false),
    })
    .prefault({}),
  /** What the display gives its room to: the bow with the number beside it, or the number first, for small screens. */
  layout: z.enum(['bow', 'numbers']).default('bow'),
  theme: z.enum(['system', 'dark', 'light', 'contrast']).default('system'),
  /** What the app speaks; the browser's language where left out. */
  language: z.enum(languageTags).optional(),
  keys: keysSchema.prefault({}),
  /** What is listened to beside keys and screen. The microphone only when the archer has turned it on. */
  listens: z
    .strictObject({
      gamepad: z.boolean().default(true),
      headset: z.boolean().default(false),
      microphone: z.boolean().default(false),
    })
    .prefault({}),
  /** The camera as second mirror and witness. Off until the archer turns it on. */
  camera: z
    .strictObject({
      on: z.boolean().default(false),
      /** Which camera, as the browser calls it; its own choice where left out. */
      deviceId: z.string().max(200).optional(),
      /** Only the replay: no model is loaded, and nothing is judged or logged. */
      replayOnly: z.boolean().default(false),
      /** One soft word in the hold when something has moved. */
      formWord: z.boolean().default(false),
      /** A hold counts from the anchor that the camera sees. */
      countFromAnchor: z.boolean().default(false),
    })
    .prefault({}),
  /** A CSS pixel of this screen, millimetres, where the archer has measured it. */
  pixelMm: z.number().min(0.03).max(2).optional(),
  /** A drill takes the whole screen. */
  fullScreen: z.boolean().default(false),
  /** The archer's own steps, said during a hold where a program asks for them. */
  shotProcess: z.array(z.string().min(1).max(80)).max(20).default([]),
  /** What the archer answered to the lines that a program would say at full draw: the exact text counts. It never leaves in a backup. */
  callAnswers: z
    .array(z.strictObject({ programId: z.string().min(1).max(120), allowed: callLines, silenced: callLines }))
    .max(MOST_CALL_ANSWERS)
    .default([]),
  /** The picture of them: strokes of x, y pairs in 0..1 of a square, as a week's sketch. */
  shotSketch: z.array(z.array(z.number()).max(4000)).max(400).optional(),
  /** The archer's routines without a bow: lines to tick off, never holds. */
  routines: z
    .array(
      z.strictObject({
        id: z.string().min(1).max(64),
        title: z.string().min(1).max(120),
        kind: z.enum(['strength', 'mobility', 'fitness']),
        minutes: z.int().min(1).max(240),
        lines: z.array(z.string().min(1).max(200)).min(1).max(30),
      }),
    )
    .max(30)
    .optional(),
  /** The program that the archer took last. */
  programId: z.string().max(64).optional(),
  /** The day for which it was chosen, ISO 8601: on that day it comes before what the season has. */
  programDay: z.iso.date().optional(),
  /** The longest hold the archer has tried to exhaustion, seconds. */
  maxHoldSeconds: z.number().min(1).max(600).optional(),
  /** What the coming weeks are planned by: a competition's day, and days with a drill in each week. */
  plan: z
    .strictObject({
      competitionDay: z.iso.date().optional(),
      daysPerWeek: z.int().min(1).max(7).optional(),
      /** Minutes that the archer usually has. */
      usualMinutes: z.int().min(5).max(240).optional(),
    })
    .optional(),
  /** The day a week starts on where pages list days; totals are always of ISO weeks. */
  weekStart: z.enum(['monday', 'sunday', 'saturday']).default('monday'),
  /** Where the archer has put away what to look at before shooting at home: places, as the archer calls them. */
  rangeCheckPlaces: z.array(z.string().min(1).max(60)).max(20).default([]),
  /** Who hands over to a coach: the name they call themselves, and an id that is the same in every file. */
  archer: z.strictObject({ id: z.string().min(1).max(64), name: z.string().max(120) }).optional(),
  /** A backup to a chosen folder, or a reminder of one. Off until the archer turns it on. */
  backup: z
    .strictObject({
      everyDays: z.int().min(1).max(90).optional(),
      lastAt: z.string().max(40).optional(),
      /** Backups go to a folder that the archer chose; otherwise the app reminds. */
      toFolder: z.boolean().default(false),
    })
    .prefault({}),
});
/** The archer's kit with its defaults filled in. */
export type Kit = z.output<typeof kitSchema>;

/**
 * The kit of a first run.
 * @returns a fresh kit with every default filled in.
 */
export function createKit(): Kit {
  return kitSchema.parse({});
}

/**
 * Reads a stored kit, keeping each value that is still good when another one is not.
 * @param stored what was found on disk.
 * @returns the kit, and whether anything of it had to be left out.
 */
export function salvageKit(stored: unknown): { kit: Kit; damaged: boolean } {
  const whole = kitSchema.safeParse(stored ?? {});
  if (whole.success) return { kit: whole.data, damaged: false };
  const good: Record<string, unknown> = {};
  if (typeof stored === 'object' && stored !== null) {
    for (const [key, schema] of Object.entries(kitSchema.shape)) {
      const value: unknown = Object.getOwnPropertyDescriptor(stored, key)?.value;
      const read = schema.safeParse(value);
      if (read.success && value !== undefined) good[key] = value;
    }
  }
  return { kit: kitSchema.parse(good), damaged: true };
}
