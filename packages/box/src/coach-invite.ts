import { base64urlnopad } from '@scure/base';
import { z } from 'zod';

const inviteSchema = z.object({
  /** What the coach calls themselves. */
  coach: z.string().min(1).max(60),
  /** The coach's public key, as age writes it: what is sealed with it only the coach can open. */
  recipient: z.string().regex(/^age1[a-z0-9]{40,100}$/),
  /** The coach's folder on the host. */
  path: z.string().regex(/^[a-z2-7]{32}$/),
  /** Where boxes are hosted, as in a pairing. */
  address: z
    .string()
    .max(400)
    .regex(/^(\/(?!\/)|https?:\/\/)[^?#@]*$/),
});
/** What an archer needs to hand over to a coach: no secret, so that it may hang on a club's wall. */
export type CoachInvite = z.output<typeof inviteSchema>;

/**
 * Writes an invitation as the end of a link.
 * @param invite what an archer needs.
 * @returns the text, base64url.
 */
export function formatInvite({ coach, recipient, path, address }: CoachInvite): string {
  return base64urlnopad.encode(new TextEncoder().encode(JSON.stringify({ coach, recipient, path, address })));
}

/**
 * Reads the end of an invitation's link.
 * @param text as `formatInvite` gave it.
 * @returns the invitation; undefined where the text is cut off, changed, or none.
 */
export function parseInvite(text: string): CoachInvite | undefined {
  if (text.length > 2000) return undefined;
  try {
    const found = new TextDecoder('utf-8', { fatal: true }).decode(base64urlnopad.decode(text.trim()));
    const read = inviteSchema.safeParse(JSON.parse(found));
    return read.success ? read.data : undefined;
  } catch {
    return undefined;
  }
}
