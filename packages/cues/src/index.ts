export type { AudioOutput } from './audio-output.ts';
export { type CueEnvironment, type CuePlayer, createCuePlayer } from './cue-player.ts';
export { type CueSettings, type CueVoice, changeCueSettings, defaultCueSettings } from './cue-settings.ts';
export { cueTone, HIGHEST_HZ } from './cue-tone.ts';
export type { CueTrouble } from './cue-trouble.ts';
export { phrases } from './phrases.ts';
export { type PressSound, pressSounds, type SoundCue, type SoundKind } from './press-sound.ts';
export { CUE_TRACK_HZ, type CueTrackOptions, renderCueTrack } from './render-cue-track.ts';
export type { Sprite, SpritePack } from './sprite-pack.ts';
