import { likelyPixelMm, type RunnerSettings, type Viewing } from '@larkhold/runner';
import type { Kit } from '@larkhold/store';
import { allowedCallsOf } from './call-answers.ts';

/**
 * What the runner needs of the kit.
 * @param kit the archer's
 * @param programId the program of the drill, as `idOf` names it: its lines that may be said at full draw
 * @returns the runner's settings
 */
export function runnerSettingsOf(kit: Kit, programId: string): RunnerSettings {
  const { soundLevel, voice, quiet, spoken, saysWarmUp, viewing, hand, theme, layout, keys, shotProcess, fullScreen } =
    kit;
  const sound = { soundLevel, voice, quiet, spoken, saysWarmUp };
  const display = {
    flipped: viewing.flipped,
    viewing: sightOf(kit),
    pixelMm: pixelMmOf(kit),
    hand,
    theme,
    layout,
    fullScreen,
  };
  const allowedCalls = allowedCallsOf(kit, programId);
  const countFromAnchor = kit.camera.on && !kit.camera.replayOnly && kit.camera.countFromAnchor;
  return { ...sound, ...display, keys, shotProcess, allowedCalls, countFromAnchor };
}

/**
 * How the archer looks at the screen.
 * @param kit the archer's
 * @returns distances, metres; the mirror's only where one is used
 */
export function sightOf({ viewing: { distanceM, byMirror, mirrorToScreenM } }: Pick<Kit, 'viewing'>): Viewing {
  return byMirror ? { distanceM, mirrorToScreenM } : { distanceM };
}

/**
 * A CSS pixel of this screen.
 * @param kit the archer's
 * @returns as measured, else as is likely, millimetres
 */
export function pixelMmOf({ pixelMm }: Pick<Kit, 'pixelMm'>): number {
  const isTouch = matchMedia('(pointer: coarse)').matches;
  return pixelMm ?? likelyPixelMm(Math.min(screen.width, screen.height), isTouch);
}
