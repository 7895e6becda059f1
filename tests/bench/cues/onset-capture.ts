/** Records when sound begins at a node, to the sample. */
export interface OnsetCapture {
  /** Audio times of every onset so far, seconds. */
  readonly onsets: number[];
  /** The loudest sample since the given audio time, 0..1. */
  peakSince(audioSeconds: number): number;
  /** When an audio time is heard, on the page clock, milliseconds. */
  toPage(audioSeconds: number): number;
  close(): void;
}

/** Sound after this much silence is an onset, in seconds. */
const SILENCE_SECONDS = 0.03;
/** What counts as sound: a tone passes it within its first two milliseconds. */
const THRESHOLD = 0.0015;

/** How long a tone sounds before it is loud enough to be counted, seconds: it begins softly, so that nothing clicks. */
function riseSeconds(tone: Float32Array, sampleRate: number): number {
  return (
    Math.max(
      0,
      tone.findIndex((sample) => Math.abs(sample) > THRESHOLD),
    ) / sampleRate
  );
}

const processor = `
registerProcessor('onset-capture', class extends AudioWorkletProcessor {
  quiet = Infinity;
  process([input]) {
    const samples = input[0];
    let peak = 0;
    if (!samples) { this.quiet += 128; return true; }
    for (let index = 0; index < samples.length; index += 1) {
      const level = Math.abs(samples[index]);
      if (level > peak) peak = level;
      if (level > ${THRESHOLD}) {
        if (this.quiet > ${SILENCE_SECONDS} * sampleRate) this.port.postMessage({ onset: (currentFrame + index) / sampleRate });
        this.quiet = 0;
      } else this.quiet += 1;
    }
    if (peak > 0) this.port.postMessage({ peak, at: currentFrame / sampleRate });
    return true;
  }
});`;

/**
 * Listens at a node with an AudioWorklet.
 *
 * @param audio the running context
 * @param node where to listen, for example the master gain
 * @param tone what is played, by the context's sample rate: an onset is then where it begins, and not where it is loud enough to be counted
 * @returns the capture; it runs until closed
 */
export async function captureOnsets(
  audio: AudioContext,
  node: AudioNode,
  tone: Float32Array = new Float32Array(),
): Promise<OnsetCapture> {
  const rise = riseSeconds(tone, audio.sampleRate);
  await audio.audioWorklet.addModule(`data:text/javascript,${encodeURIComponent(processor)}`);
  const worklet = new AudioWorkletNode(audio, 'onset-capture', { numberOfOutputs: 0 });
  const onsets: number[] = [];
  const peaks: { at: number; peak: number }[] = [];
  worklet.port.onmessage = ({ data }: MessageEvent<{ onset?: number; peak?: number; at?: number }>) => {
    if (data.onset !== undefined) onsets.push(data.onset - rise);
    if (data.peak !== undefined && data.at !== undefined) peaks.push({ at: data.at, peak: data.peak });
  };
  node.connect(worklet);
  // The browser's own stamps of both clocks: what is heard when.
  const readings: { seconds: number; offsetMs: number }[] = [];
  const read = (): void => {
    const { contextTime = 0, performanceTime = 0 } = audio.getOutputTimestamp();
    if (performance.now() - performanceTime > 100 || contextTime === 0) return;
    readings.push({ seconds: contextTime, offsetMs: contextTime * 1000 - performanceTime });
  };
  const timer = setInterval(read, 7);
  return {
    onsets,
    peakSince: (seconds) => peaks.filter(({ at }) => at >= seconds).reduce((most, { peak }) => Math.max(most, peak), 0),
    toPage(seconds) {
      const nearest = [...readings].sort((a, b) => Math.abs(a.seconds - seconds) - Math.abs(b.seconds - seconds));
      const offsets = nearest.slice(0, 9).map(({ offsetMs }) => offsetMs);
      return seconds * 1000 - (offsets.sort((a, b) => a - b)[offsets.length >> 1] ?? Number.NaN);
    },
    close() {
      clearInterval(timer);
      node.disconnect(worklet);
    },
  };
}
