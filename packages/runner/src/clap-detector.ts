/** Finds claps and loud clicks in sound as it comes in. It keeps no sound: only how loud the last pieces were. */
export interface ClapDetector {
  /**
   * Listens to the next samples.
   * @param samples -1..1, one channel, following those before without a gap
   * @returns where claps began, seconds since the first sample; a clap is reported as soon as it has died away, 60 to 150 ms later
   */
  hear(samples: Float32Array): number[];
}

/** Length of the pieces whose loudness is compared, seconds. */
const PIECE_SECONDS = 0.004;
/** How many times as loud as the room around it a clap is, at least. */
const ABOVE_ROOM_RATIO = 7;
/** And at least so loud, as a mean of the sharp part of the sound (full scale is 1). */
const LEAST_LOUDNESS = 0.012;
/** It rises from the room to its loudest within this time, */
const RISE_SECONDS = 0.016;
/** and falls to this share of it within the time after. Voices and tones last longer. */
const FALL_RATIO = 0.3;
const FALL_SECONDS = 0.14;
/** Two hands do not clap faster. */
const APART_SECONDS = 0.3;
/** How fast the ear gets used to a room, seconds. */
const ROOM_SECONDS = 0.5;

interface Rise {
  startPiece: number;
  peak: number;
  peakPiece: number;
  room: number;
}

/**
 * A detector of claps.
 * @param sampleRate samples a second
 * @returns the detector, used to silence
 * @throws RangeError when the rate is not at least 8000
 * @source own: a clap is sharp, sudden and short; measured on made claps, voices and this product's own tones in its test
 */
export function createClapDetector(sampleRate: number): ClapDetector {
  if (!(sampleRate >= 8000)) throw new RangeError(`sampleRate is ${sampleRate}; expected at least 8000`);
  const pieceLength = Math.round(sampleRate * PIECE_SECONDS);
  const pieceSeconds = pieceLength / sampleRate;
  const piecesIn = (seconds: number) => Math.round(seconds / pieceSeconds);
  const adapt = pieceSeconds / ROOM_SECONDS;
  let room = 0;
  let before = 0;
  let beforeThat = 0;
  let sum = 0;
  let filled = 0;
  let piece = 0;
  let rise: Rise | undefined;
  let quietFromPiece = 0;

  /** Loudness of one piece. Returns the beginning of a clap that has just been recognised. */
  function judge(loudness: number): number | undefined {
    const isLoud = loudness > LEAST_LOUDNESS && loudness > room * ABOVE_ROOM_RATIO;
    if (rise === undefined) {
      if (isLoud && piece >= quietFromPiece) rise = { startPiece: piece, peak: loudness, peakPiece: piece, room };
      // Loud pieces count little: a clap must not make the ear deaf for the next.
      room += (Math.min(loudness, room * 2 + LEAST_LOUDNESS / 4) - room) * adapt;
      return undefined;
    }
    if (loudness > rise.peak) {
      rise.peak = loudness;
      rise.peakPiece = piece;
    }
    if (rise.peakPiece - rise.startPiece > piecesIn(RISE_SECONDS)) return giveUp();
    if (loudness <= rise.peak * FALL_RATIO && piece - rise.peakPiece >= 2) {
      const clapPiece = rise.startPiece;
      rise = undefined;
      quietFromPiece = clapPiece + piecesIn(APART_SECONDS);
      return clapPiece * pieceSeconds;
    }
    if (piece - rise.peakPiece > piecesIn(FALL_SECONDS)) return giveUp();
    return undefined;
  }

  function giveUp(): undefined {
    // Something louder has come to stay: it is the room now, and no clap until it is over.
    room = Math.max(room, (rise?.peak ?? 0) / ABOVE_ROOM_RATIO);
    rise = undefined;
    quietFromPiece = piece + piecesIn(APART_SECONDS / 2);
    return undefined;
  }

  return {
    hear(samples) {
      const claps: number[] = [];
      for (const sample of samples) {
        // The second difference keeps what is sharp and drops hum, voice and tones.
        sum += Math.abs(sample - 2 * before + beforeThat);
        beforeThat = before;
        before = sample;
        filled += 1;
        if (filled < pieceLength) continue;
        const clap = judge(sum / pieceLength / 2);
        if (clap !== undefined) claps.push(clap);
        piece += 1;
        filled = 0;
        sum = 0;
      }
      return claps;
    },
  };
}
