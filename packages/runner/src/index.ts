export type { DrillSound } from './asked-aloud.ts';
export { BOW_BOX, type BowPaths, bowPaths, type DrawHand } from './bow-paths.ts';
export { type BowShape, bowShape } from './bow-shape.ts';
export { browserEnvironment, formatLocalInstant } from './browser-environment.ts';
export type { AfterDrill, DrillEvents } from './drill-events.ts';
export { gamepadPresses } from './gamepad-presses.ts';
export { headsetPresses } from './headset-presses.ts';
export type { KeysFrom } from './keys-from.ts';
export { LarkAfter } from './lark-after.ts';
export { LarkDrill } from './lark-drill.ts';
export { LarkGlance } from './lark-glance.ts';
export { LarkLearn } from './lark-learn.ts';
export {
  arcMinutesOf,
  characterHeightMm,
  digitLegibility,
  EASY_ARC_MINUTES,
  type Legibility,
  likelyPixelMm,
  sightPathM,
  USUAL_PIXEL_MM,
  type Viewing,
} from './legibility.ts';
export { microphoneClaps } from './microphone-claps.ts';
export type { PressSource } from './press-source.ts';
export type { RunnerEnvironment } from './runner-environment.ts';
export { defaultRunnerSettings, type KeyAction, type RunnerSettings, type RunnerTheme } from './runner-settings.ts';
