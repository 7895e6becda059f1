import { Howl, Howler } from 'howler';

/** The audio clock and the way out to the loudspeaker. */
export interface AudioOutput {
  /** The context in use, undefined before there is one. Read again each time: the library may replace it. */
  context(): AudioContext | undefined;
  /** Where sources are connected: the master gain. */
  destination(): AudioNode | undefined;
  /** Tries to let sound begin or go on. */
  resume(): Promise<boolean>;
  /** Stops the audio clock, which costs a machine some power while it only plays silence; `resume` goes on. */
  suspend(): Promise<void>;
  /** @param level loudness, 0..1 */
  setLevel(level: number): void;
}

/** One silent millisecond as a WAV; the library attaches its press-to-unlock listeners with the first sound it gets. */
const SILENCE = 'data:audio/wav;base64,UklGRiwAAABXQVZFZm10IBAAAAABAAEAQB8AAEAfAAABAAgAZGF0YQgAAACAgICAgICAgA==';
/** A refused `resume` never settles in some browsers; this is how long we wait for it, in milliseconds. */
const RESUME_WAIT_MS = 600;

/**
 * The real sound of this page, by howler: one context, one master gain, unlocking on the first press.
 *
 * @returns the output; the context is made at the first `resume` or `setLevel`
 */
export function howlerOutput(): AudioOutput {
  let opened = false;
  const open = (): void => {
    if (opened) return;
    opened = true;
    // Half a minute of silence would otherwise suspend the context, and a rest is often longer.
    Howler.autoSuspend = false;
    Howler.html5PoolSize = 0;
    Howler.volume(Howler.volume());
    if (Howler.ctx) new Howl({ src: [SILENCE], format: ['wav'] });
  };
  const context = (): AudioContext | undefined =>
    opened && Howler.usingWebAudio && Howler.ctx ? Howler.ctx : undefined;
  return {
    context,
    destination: () => (context() ? Howler.masterGain : undefined),
    async resume() {
      open();
      const audio = context();
      if (!audio || audio.state === 'closed') return false;
      if (audio.state === 'running') return true;
      const waited = new Promise<void>((resolve) => setTimeout(resolve, RESUME_WAIT_MS));
      await Promise.race([audio.resume().catch(() => undefined), waited]);
      return audio.state === ('running' as AudioContextState);
    },
    async suspend() {
      await context()
        ?.suspend()
        .catch(() => undefined);
    },
    setLevel(level) {
      open();
      Howler.volume(level);
    },
  };
}
