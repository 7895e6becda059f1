import type { AudioOutput } from '@larkhold/cues';

/**
 * A way out for the product's cues that leads into a graph of the bench's own.
 * @param audio the graph's context, begun
 * @param gain where its sound goes
 * @returns it; its level is the bench's to set
 */
export function plainOutput(audio: AudioContext, gain: GainNode): AudioOutput {
  return {
    context: () => audio,
    destination: () => gain,
    resume: async () => audio.state === 'running',
    suspend: () => audio.suspend(),
    setLevel: () => undefined,
  };
}
