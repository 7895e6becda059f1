import * as z from 'zod';

/** What this device knows of another one in the box. */
export const metDeviceSchema = z.object({
  /** What the archer calls it. */
  title: z.string().max(60),
  /** The mark of its file when it was last read, and the turn that it said. */
  mark: z.string().max(200),
  turn: z.int().min(0),
  /** When that file was written, and when it was read here, ISO 8601. */
  madeAt: z.string().max(40),
  metAt: z.string().max(40),
});
/** What this device knows of another one in the box. */
export type MetDevice = z.output<typeof metDeviceSchema>;

/** A round that was made, for the log. */
export const roundEntrySchema = z.object({
  at: z.string().max(40),
  /** What happened, in plain words; one line each. */
  lines: z.array(z.string().max(400)).max(40),
  isGood: z.boolean(),
});
/** A round that was made, for the log. */
export type RoundEntry = z.output<typeof roundEntrySchema>;

/** The way to the archer's box, and what this device knows of it. It is kept on this device and goes into no file. */
export const boxLinkSchema = z.object({
  secret: z.string().max(64),
  address: z.string().max(400).optional(),
  /** This device's name in the box: a few letters of chance. */
  device: z.string().regex(/^[a-z0-9]{1,16}$/),
  /** What the archer calls this device. */
  title: z.string().max(60),
  turn: z.int().min(0),
  /** The mark of this device's own file as it was last put, and what it held. */
  ownMark: z.string().max(200).optional(),
  ownDigest: z.string().max(64).optional(),
  lastPutAt: z.string().max(40).optional(),
  met: z.record(z.string().max(16), metDeviceSchema),
  /** When a round last went well. */
  lastRoundAt: z.string().max(40).optional(),
  /** The last rounds, latest first. */
  log: z.array(roundEntrySchema).max(20),
  /** A round was undone: nothing is met until the archer says so. */
  isPaused: z.boolean().optional(),
});
/** The way to the archer's box, and what this device knows of it. */
export type BoxLink = z.output<typeof boxLinkSchema>;

/**
 * Makes a device's first link to a box.
 * @param pairing the secret, and the address where there is one.
 * @param title what the archer calls this device.
 * @returns the link, with a device's name of the platform's own chance.
 */
export function createBoxLink(pairing: { secret: string; address?: string }, title: string): BoxLink {
  return { ...pairing, device: createDeviceName(), title, turn: 0, met: {}, log: [] };
}

/**
 * A new name for a device in the box.
 * @returns ten letters and digits.
 */
export function createDeviceName(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(10)), (byte) => (byte % 32).toString(32)).join('');
}
