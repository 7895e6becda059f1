const HEADER_BYTES = 44;
const BYTES_PER_SAMPLE = 2;

/**
 * The header of a WAV file of 16-bit mono samples.
 *
 * @param sampleCount how many samples follow
 * @param sampleRate samples per second, hertz
 * @returns 44 bytes
 * @throws RangeError when the file would pass the format's 4 GB
 * @source Microsoft and IBM, 1991, Multimedia programming interface and data specifications 1.0, RIFF WAVE
 */
export function wavHeader(sampleCount: number, sampleRate: number): ArrayBuffer {
  const soundBytes = sampleCount * BYTES_PER_SAMPLE;
  if (soundBytes > 0xffffffff - HEADER_BYTES) throw new RangeError(`sampleCount is ${sampleCount}; a WAV holds 4 GB`);
  const header = new DataView(new ArrayBuffer(HEADER_BYTES));
  const text = (at: number, letters: string): void => {
    for (const [index, letter] of [...letters].entries()) header.setUint8(at + index, letter.charCodeAt(0));
  };
  text(0, 'RIFF');
  header.setUint32(4, HEADER_BYTES - 8 + soundBytes, true);
  text(8, 'WAVEfmt ');
  header.setUint32(16, 16, true);
  header.setUint16(20, 1, true); // whole numbers, not compressed
  header.setUint16(22, 1, true); // mono
  header.setUint32(24, sampleRate, true);
  header.setUint32(28, sampleRate * BYTES_PER_SAMPLE, true);
  header.setUint16(32, BYTES_PER_SAMPLE, true);
  header.setUint16(34, BYTES_PER_SAMPLE * 8, true);
  text(36, 'data');
  header.setUint32(40, soundBytes, true);
  return header.buffer;
}

/**
 * Samples as the 16-bit whole numbers of a WAV.
 *
 * @param samples -1..1; what is louder is cut
 * @returns two bytes a sample, least significant first
 */
export function wavSamples(samples: Float32Array): ArrayBuffer {
  const bytes = new DataView(new ArrayBuffer(samples.length * BYTES_PER_SAMPLE));
  for (const [index, sample] of samples.entries()) {
    bytes.setInt16(index * BYTES_PER_SAMPLE, Math.round(Math.max(-1, Math.min(1, sample)) * 32767), true);
  }
  return bytes.buffer;
}
