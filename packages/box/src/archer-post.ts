import { generateX25519Identity, identityToRecipient } from 'age-encryption';
import { z } from 'zod';
import type { BoxAdapter, BoxAnswer } from './box-adapter.ts';
import { createDeviceName } from './box-link.ts';
import type { BoxTrouble } from './box-trouble.ts';
import type { CoachInvite } from './coach-invite.ts';
import { getLetter, latestLetters, putLetter } from './letter.ts';

/** An archer's way to one coach: kept on this device, in no file. */
export const archerPostSchema = z.object({
  coach: z.string().max(60),
  recipient: z.string().max(200),
  path: z.string().max(32),
  address: z.string().max(400),
  /** The archer's names in the coach's folder, one for hand-overs and one for answers, and the key that opens these. */
  owner: z.string().max(16),
  replyOwner: z.string().max(16),
  identity: z.string().max(200),
  turn: z.int().min(0),
  sent: z.object({ file: z.string().max(64), text: z.string(), madeAt: z.string().max(40) }).optional(),
  answerTurn: z.int().min(0),
  /** The coach's last answer, until the archer has read it. */
  answer: z.object({ text: z.string(), cameAt: z.string().max(40) }).optional(),
});
/** An archer's way to one coach. */
export type ArcherPost = z.output<typeof archerPostSchema>;

/**
 * Takes an invitation.
 * @param invite as the coach gave it.
 * @returns the way to the coach, with names and a key of the archer's own.
 */
export async function createArcherPost(invite: CoachInvite): Promise<ArcherPost> {
  const identity = await generateX25519Identity();
  return { ...invite, owner: createDeviceName(), replyOwner: createDeviceName(), identity, turn: 0, answerTurn: 0 };
}

/**
 * Hands over to the coach; what was handed over before goes.
 * @param box the coach's folder. @param post as it is kept. @param text the hand-over file. @param now the instant, ISO 8601 UTC.
 * @returns the post to keep, or what was wrong; nothing is lost then.
 */
export async function sendHandOver(
  box: BoxAdapter,
  post: ArcherPost,
  text: string,
  now: string,
): Promise<BoxAnswer<ArcherPost>> {
  const turn = post.turn + 1;
  const reply = { owner: post.replyOwner, recipient: await identityToRecipient(post.identity) };
  const put = await putLetter(box, { kind: 'hand-over', owner: post.owner, turn, reply, file: text }, post.recipient);
  if (!put.ok) return put;
  if (post.sent) await box.remove(post.sent.file);
  return { ok: true, value: { ...post, turn, sent: { file: put.value, text, madeAt: now } } };
}

/**
 * Looks for the coach's answer.
 * @param box the coach's folder. @param post as it is kept. @param now the instant, ISO 8601 UTC.
 * @returns the post to keep, whether an answer is new, and what was wrong.
 */
export async function readAnswer(
  box: BoxAdapter,
  post: ArcherPost,
  now: string,
): Promise<{ post: ArcherPost; isNew: boolean; trouble?: BoxTrouble }> {
  const listed = await box.list();
  if (!listed.ok) return { post, isNew: false, trouble: listed.trouble };
  const entry = latestLetters(listed.value).get(post.replyOwner);
  if (entry && entry.turn > post.answerTurn) {
    const read = await getLetter(box, entry, post.identity);
    if (!read.ok) return { post, isNew: false, trouble: read.trouble };
    if (read.value.kind !== 'answer') return { post, isNew: false, trouble: { kind: 'swapped', file: entry.name } };
    const answer = { text: read.value.file, cameAt: now };
    return { post: { ...post, answerTurn: entry.turn, answer }, isNew: true };
  }
  return { post, isNew: false };
}

/**
 * Leaves a coach: what was handed over goes from the box.
 * @param box the coach's folder. @param post as it is kept.
 */
export async function leaveCoach(box: BoxAdapter, post: ArcherPost): Promise<void> {
  if (post.sent) await box.remove(post.sent.file);
}
