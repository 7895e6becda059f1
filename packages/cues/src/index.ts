export type { AudioOutput } from './audio-output.ts';
export { type CueEnvironment, type CuePlayer, createCuePlayer } from './cue-player.ts';
export { type CueSettings, type CueVoice, changeCueSettings, defaultCueSettings } from './cue-settings.ts';
export { cueTone, HIGHEST_HZ } from './cue-tone.ts';
export type { CueTrouble } from './cue-trouble.ts';
export { CUE_TRACK_HZ, type CueTrackOptions, renderCueTrack } from './render-cue-track.ts';
export type { Sprite, SpritePack } from './sprite-pack.ts';
