import { z } from 'zod';
import { boxTroubleKinds } from './box-trouble.ts';
import { roundEntrySchema } from './round-news.ts';
import { deviceKitSchema } from './sealed-state.ts';

/** What this device knows of another one in the box. */
export const metDeviceSchema = z.object({
  /** What the archer calls it. */
  title: z.string().max(60),
  /** The turn of its latest file that was read, and the names of the files of that turn. */
  turn: z.int().min(0),
  files: z.array(z.string().max(64)).max(100),
  /** When that file was written, and when it was read here, ISO 8601. */
  madeAt: z.string().max(40),
  metAt: z.string().max(40),
  /** Its controls, sound and screen, as it wrote them; absent where an older app did. */
  kit: deviceKitSchema,
});
/** What this device knows of another one in the box. */
export type MetDevice = z.output<typeof metDeviceSchema>;

/** The way to the archer's box, and what this device knows of it. It is kept on this device and goes into no file. */
export const boxLinkSchema = z.object({
  secret: z.string().max(64),
  address: z.string().max(400).optional(),
  /** This device's name in the box: a few letters of chance. */
  device: z.string().regex(/^[a-z0-9]{1,16}$/),
  /** What the archer calls this device. */
  title: z.string().max(60),
  turn: z.int().min(0),
  /** This device's file, the one before it, and one that was on its way when the app was last closed. */
  own: z.object({
    file: z.string().max(64).optional(),
    before: z.string().max(64).optional(),
    coming: z.string().max(64).optional(),
    /** The mark of the file as the host told it, and what it held. */
    mark: z.string().max(200).optional(),
    digest: z.string().max(64).optional(),
    madeAt: z.string().max(40).optional(),
    /** Files under a name that this device has given up. */
    left: z.array(z.string().max(64)).max(4).optional(),
  }),
  met: z.record(z.string().max(16), metDeviceSchema),
  /** Files that were reported as bad, with the mark they had: they are not read again. */
  told: z.record(z.string().max(64), z.object({ mark: z.string().max(200), kind: z.enum(boxTroubleKinds) })),
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
  return { ...pairing, device: createDeviceName(), title, turn: 0, own: {}, met: {}, told: {}, log: [] };
}

/**
 * Reads a link as it was kept.
 * @param found what was stored.
 * @returns the link; undefined where none is stored that this version can use.
 */
export function readBoxLink(found: unknown): BoxLink | undefined {
  const read = boxLinkSchema.safeParse(found);
  return read.success ? read.data : undefined;
}

/**
 * A new name for a device in the box.
 * @returns ten letters and digits.
 */
export function createDeviceName(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(10)), (byte) => (byte % 32).toString(32)).join('');
}
