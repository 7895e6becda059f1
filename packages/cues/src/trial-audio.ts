/** A loudspeaker that only notes what it would sound, on clocks moved by hand. */
export interface TrialAudio {
  context: AudioContext;
  destination: AudioNode;
  /** The page clock, milliseconds. */
  nowMs(): number;
  /** Both clocks go on; what becomes audible meanwhile is noted. */
  pass(spanMs: number): void;
  /** The sound loses some milliseconds, as on a busy machine: the page goes on, the audio clock does not. */
  lose(ms: number): void;
  /** The sound stands still from now on, or goes on. */
  setRunning(isRunning: boolean): void;
  /** When each sound became audible, page clock, milliseconds. */
  heardMs: readonly number[];
}

/** From the audio clock to the ear, milliseconds. */
const WAY_OUT_MS = 40;

interface Source {
  atSeconds: number;
  isStopped: boolean;
}

/**
 * Audio for tests of what is scheduled when.
 * @param startMs where the page clock begins, milliseconds
 * @returns it, running
 */
export function trialAudio(startMs = 1000): TrialAudio {
  let pageMs = startMs;
  let audioMs = 500;
  let state: AudioContextState = 'running';
  const sources = new Set<Source>();
  const heardMs: number[] = [];
  const events = new EventTarget();
  const node = () => ({ connect: () => node(), disconnect: () => undefined });
  const param = () => ({ setValueAtTime: () => undefined, linearRampToValueAtTime: () => undefined });

  const createBufferSource = () => {
    const source: Source = { atSeconds: Number.POSITIVE_INFINITY, isStopped: false };
    return {
      ...node(),
      buffer: null,
      start(atSeconds: number) {
        source.atSeconds = Math.max(atSeconds, audioMs / 1000);
        sources.add(source);
      },
      stop() {
        source.isStopped = true;
      },
    };
  };
  const context = {
    sampleRate: 48_000,
    get currentTime() {
      return audioMs / 1000;
    },
    get state() {
      return state;
    },
    getOutputTimestamp: () => ({ contextTime: Math.max(0, audioMs - WAY_OUT_MS) / 1000, performanceTime: pageMs }),
    createGain: () => ({ ...node(), gain: param() }),
    createBuffer: (_channels: number, length: number, sampleRate: number) => ({
      duration: length / sampleRate,
      copyToChannel: () => undefined,
    }),
    createBufferSource,
    addEventListener: events.addEventListener.bind(events),
    removeEventListener: events.removeEventListener.bind(events),
  };

  function sound(): void {
    for (const source of sources) {
      const audibleAtMs = source.atSeconds * 1000 + WAY_OUT_MS;
      if (source.isStopped) sources.delete(source);
      else if (audibleAtMs <= audioMs) {
        sources.delete(source);
        heardMs.push(pageMs - (audioMs - audibleAtMs));
      }
    }
  }

  return {
    context: context as unknown as AudioContext,
    destination: node() as unknown as AudioNode,
    nowMs: () => pageMs,
    pass(spanMs) {
      for (let left = spanMs; left > 0; left -= 1) {
        const ms = Math.min(1, left);
        pageMs += ms;
        if (state === 'running') audioMs += ms;
        sound();
      }
    },
    lose(ms) {
      pageMs += ms;
    },
    setRunning(isRunning) {
      state = isRunning ? 'running' : 'suspended';
      events.dispatchEvent(new Event('statechange'));
    },
    heardMs,
  };
}
