/** Bits per second of an Opus track: speech and plain tones stay clear at this. */
const OPUS_BITRATE = 24_000;

/**
 * Sound as Opus in a WebM file, by the browser's own encoder.
 *
 * @param chunks mono samples, -1..1, in order and without gap
 * @param sampleRate samples per second, hertz
 * @returns the file
 * @throws RangeError when this browser cannot encode Opus
 */
export async function encodeWebm(chunks: AsyncIterable<Float32Array>, sampleRate: number): Promise<Blob> {
  // Loaded only when such a file is wished for: most mornings need no encoder.
  const { AudioSample, AudioSampleSource, BufferTarget, canEncodeAudio, Output, Quality, WebMOutputFormat } =
    await import('mediabunny');
  const quality = new Quality({ bitrate: OPUS_BITRATE });
  if (!(await canEncodeAudio('opus', { numberOfChannels: 1, sampleRate, quality }))) {
    throw new RangeError(`format is 'webm'; this browser cannot encode Opus at ${sampleRate} Hz, 'wav' always works`);
  }
  const target = new BufferTarget();
  const output = new Output({ format: new WebMOutputFormat(), target });
  const source = new AudioSampleSource({ codec: 'opus', quality });
  output.addAudioTrack(source);
  await output.start();
  try {
    let count = 0;
    for await (const data of chunks) {
      const about = { format: 'f32' as const, numberOfChannels: 1, sampleRate, timestamp: count / sampleRate };
      const sample = new AudioSample({ data, ...about });
      await source.add(sample);
      sample.close();
      count += data.length;
    }
    await output.finalize();
  } catch (error) {
    await output.cancel();
    throw error;
  }
  return new Blob([target.buffer ?? new ArrayBuffer(0)], { type: 'audio/webm; codecs=opus' });
}
