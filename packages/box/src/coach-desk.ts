import { base32nopad } from '@scure/base';
import { generateX25519Identity, identityToRecipient } from 'age-encryption';
import { z } from 'zod';
import type { BoxAdapter, BoxAnswer } from './box-adapter.ts';
import { type BoxTrouble, boxTroubleSchema, isOfHost } from './box-trouble.ts';
import type { CoachInvite } from './coach-invite.ts';
import { getLetter, latestLetters, putLetter } from './letter.ts';

const PATH_BYTES = 20;

/** One archer, as a coach's app remembers them: the last hand-over, whole, and where an answer goes. */
const deskArcherSchema = z.object({
  file: z.string().max(64),
  turn: z.int().min(0),
  /** The hand-over as it came. */
  text: z.string(),
  readAt: z.string().max(40),
  reply: z.object({ owner: z.string().max(16), recipient: z.string().max(200) }).optional(),
  /** The coach's last answer, and how many there were. */
  answer: z.object({ file: z.string().max(64), turn: z.int().min(0), madeAt: z.string().max(40) }).optional(),
});

/** A coach's box on this device: its keys, and the archers that hand over into it. It goes into no file. */
export const coachDeskSchema = z.object({
  coach: z.string().max(60),
  address: z.string().max(400),
  path: z.string().max(32),
  identity: z.string().max(200),
  recipient: z.string().max(200),
  archers: z.record(z.string().max(16), deskArcherSchema),
  /** Files that could not be read, and why: they are reported once. */
  told: z.record(z.string().max(64), boxTroubleSchema),
  lastReadAt: z.string().max(40).optional(),
});
/** A coach's box on this device. */
export type CoachDesk = z.output<typeof coachDeskSchema>;

/**
 * Makes a coach's box: fresh keys and a folder that nobody guesses.
 * @param coach what the coach calls themselves.
 * @param address where boxes are hosted.
 * @returns the desk, with no archer yet.
 */
export async function createCoachDesk(coach: string, address: string): Promise<CoachDesk> {
  const identity = await generateX25519Identity();
  const path = base32nopad.encode(crypto.getRandomValues(new Uint8Array(PATH_BYTES))).toLowerCase();
  return { coach, address, path, identity, recipient: await identityToRecipient(identity), archers: {}, told: {} };
}

/**
 * What a coach gives to archers.
 * @param desk the coach's box.
 * @returns the invitation: nothing secret.
 */
export function inviteOf({ coach, recipient, path, address }: CoachDesk): CoachInvite {
  return { coach, recipient, path, address };
}

/**
 * Reads what archers have handed over since the last time.
 * @param box the coach's folder. @param desk as it is kept. @param now the instant, ISO 8601 UTC.
 * @param isHandOver tells whether a text is one, so that nothing else is remembered.
 * @returns the desk to keep, owners whose hand-overs are new, and what was wrong.
 */
export async function readDesk(
  box: BoxAdapter,
  desk: CoachDesk,
  now: string,
  isHandOver: (text: string) => boolean,
): Promise<{ desk: CoachDesk; fresh: string[]; troubles: BoxTrouble[] }> {
  const listed = await box.list();
  if (!listed.ok) return { desk, fresh: [], troubles: [listed.trouble] };
  const archers = { ...desk.archers };
  const told: CoachDesk['told'] = {};
  const [fresh, troubles]: [string[], BoxTrouble[]] = [[], []];
  const ours = new Set(Object.values(archers).map(({ reply }) => reply?.owner));
  for (const [owner, entry] of latestLetters(listed.value)) {
    const known = archers[owner];
    if (ours.has(owner) || (known && entry.turn <= known.turn)) continue;
    const before = Object.hasOwn(desk.told, entry.name) ? desk.told[entry.name] : undefined;
    if (before && before.kind !== 'newer') {
      told[entry.name] = before;
      continue;
    }
    const read = await getLetter(box, entry, desk.identity);
    if (!read.ok || read.value.kind !== 'hand-over' || !isHandOver(read.value.file)) {
      const trouble: BoxTrouble = read.ok ? { kind: 'damaged', file: entry.name } : read.trouble;
      if (trouble.kind === 'missing') continue;
      if (!isOfHost(trouble)) {
        told[entry.name] = trouble;
      }
      if (before?.kind !== trouble.kind) troubles.push(trouble);
      continue;
    }
    const { turn, file: text, reply } = read.value;
    const answer = known?.answer;
    archers[owner] = {
      file: entry.name,
      turn,
      text,
      readAt: now,
      ...(reply ? { reply } : {}),
      ...(answer ? { answer } : {}),
    };
    fresh.push(owner);
  }
  return { desk: { ...desk, archers, told, lastReadAt: now }, fresh, troubles };
}

/**
 * Answers an archer: sealed so that only they can open it.
 * @param box the coach's folder. @param desk as it is kept. @param owner whom, as in `desk.archers`.
 * @param file the hand-over with the answer in it. @param now the instant, ISO 8601 UTC.
 * @returns the desk to keep, or what was wrong; nothing is lost then.
 */
export async function answerLetter(
  box: BoxAdapter,
  desk: CoachDesk,
  owner: string,
  file: string,
  now: string,
): Promise<BoxAnswer<CoachDesk>> {
  const archer = desk.archers[owner];
  if (!archer?.reply) return { ok: false, trouble: { kind: 'missing' } };
  const turn = (archer.answer?.turn ?? 0) + 1;
  const put = await putLetter(box, { kind: 'answer', owner: archer.reply.owner, turn, file }, archer.reply.recipient);
  if (!put.ok) return put;
  if (archer.answer) await box.remove(archer.answer.file);
  const answer = { file: put.value, turn, madeAt: now };
  return { ok: true, value: { ...desk, archers: { ...desk.archers, [owner]: { ...archer, answer } } } };
}

/**
 * Forgets an archer: what they handed over goes, here and from the box. Who hands over again is remembered again.
 * @param box the coach's folder. @param desk as it is kept. @param owner whom.
 * @returns the desk to keep.
 */
export async function forgetArcher(box: BoxAdapter, desk: CoachDesk, owner: string): Promise<CoachDesk> {
  const { [owner]: archer, ...archers } = desk.archers;
  for (const name of [archer?.file, archer?.answer?.file]) if (name !== undefined) await box.remove(name);
  return { ...desk, archers };
}
