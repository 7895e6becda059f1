const RATE_HZ = 48_000;
/** A clap's sound: noise that dies away in some ten milliseconds. */
const DECAY_SECONDS = 0.012;
const CLAP_SECONDS = 0.12;

/**
 * A quiet room with claps in it, as a WAV file for a browser's made microphone.
 * @param atSeconds when a clap begins, seconds
 * @param lengthSeconds how long the file is, seconds
 * @returns the file: 16 bits, one channel, 48 kHz
 */
export function clapWav(atSeconds: readonly number[], lengthSeconds: number): Buffer {
  const count = Math.round(lengthSeconds * RATE_HZ);
  const file = Buffer.alloc(44 + count * 2);
  file.write('RIFF', 0, 'latin1');
  file.writeUInt32LE(36 + count * 2, 4);
  file.write('WAVEfmt ', 8, 'latin1');
  file.writeUInt32LE(16, 16);
  file.writeUInt16LE(1, 20);
  file.writeUInt16LE(1, 22);
  file.writeUInt32LE(RATE_HZ, 24);
  file.writeUInt32LE(RATE_HZ * 2, 28);
  file.writeUInt16LE(2, 32);
  file.writeUInt16LE(16, 34);
  file.write('data', 36, 'latin1');
  file.writeUInt32LE(count * 2, 40);
  // A generator of its own, so that the file is the same every time.
  let seed = 1;
  const noise = () => {
    seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
    return seed / 1_073_741_824 - 1;
  };
  for (let index = 0; index < count; index += 1) file.writeInt16LE(Math.round(noise() * 20), 44 + index * 2);
  for (const at of atSeconds) {
    const first = Math.round(at * RATE_HZ);
    for (let index = 0; index < CLAP_SECONDS * RATE_HZ; index += 1) {
      const seconds = index / RATE_HZ;
      const loud = 0.7 * Math.min(1, seconds / 0.001) * Math.exp(-seconds / DECAY_SECONDS);
      file.writeInt16LE(Math.round(noise() * loud * 32_767), 44 + (first + index) * 2);
    }
  }
  return file;
}
