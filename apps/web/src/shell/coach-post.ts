import type { ArcherPost, BoxAdapter, BoxTrouble, CoachDesk, CoachInvite } from '@larkhold/box';
import { parseHandOver } from '@larkhold/engine';
import type { Store } from '@larkhold/store';

/** What the post needs from outside. */
export interface CoachPostParts {
  store: Store;
  /** The app's own address. */
  origin: string;
  now(): string;
  isDrilling(): boolean;
  report(error: unknown): void;
  /** Opens a coach's folder; the one on the host unless a test says otherwise. */
  openBox?(place: { address: string; path: string }): Promise<BoxAdapter>;
}

/** Hand-overs and answers by way of a box: the archer's side, the coach's side, or both. */
export interface CoachPost {
  /** The coach's box on this device; undefined until one is made. */
  readonly desk: CoachDesk | undefined;
  /** The archer's way to a coach; undefined until one is invited. */
  readonly archer: ArcherPost | undefined;
  /** What was wrong the last time, both sides. */
  readonly troubles: readonly BoxTrouble[];
  /** Makes the coach's box. */
  openDesk(coach: string, address: string): Promise<void>;
  /** The end of the link that the coach gives to archers. */
  invite(): Promise<string>;
  /** Answers an archer of the desk. @returns what was wrong; undefined where it went well */
  answer(owner: string, file: string): Promise<BoxTrouble | undefined>;
  /** Forgets an archer of the desk, here and in the box. */
  forget(owner: string): Promise<void>;
  /** Closes the coach's box: everything that lies in it and is remembered here goes. */
  closeDesk(): Promise<void>;
  /** Takes a coach's invitation, in the place of any other coach's. */
  accept(invite: CoachInvite): Promise<void>;
  /** Hands over to the coach. @returns what was wrong; undefined where it went well */
  send(text: string): Promise<BoxTrouble | undefined>;
  /** The archer has read the answer. */
  putAnswerAway(): Promise<void>;
  /** Leaves the coach: what was handed over goes from the box. */
  leave(): Promise<void>;
  /** Looks for hand-overs and answers; never in a drill. */
  meet(): Promise<void>;
  /** Hears of every change. @returns stops it */
  subscribe(fn: () => void): () => void;
}

interface KeptPost {
  desk?: CoachDesk;
  archer?: ArcherPost;
}

/**
 * Reads what is kept of the post.
 * @param parts see `CoachPostParts`
 * @returns the post
 */
export async function createCoachPost(parts: CoachPostParts): Promise<CoachPost> {
  const { store } = parts;
  const listeners = new Set<() => void>();
  let kept = await readKept(store);
  let troubles: BoxTrouble[] = [];
  /** One change after the other: each reads what is kept, and keeps what it made of it. */
  let turn: Promise<unknown> = Promise.resolve();

  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const next = turn.then(work);
    turn = next.catch(() => undefined);
    return next;
  };
  const tell = (): void => {
    for (const fn of [...listeners]) fn();
  };
  const keep = async (next: KeptPost): Promise<void> => {
    kept = next;
    await store.putPost(next).catch(() => undefined); // told by the store's trouble
    tell();
  };
  const openBox = async (place: { address: string; path: string }): Promise<BoxAdapter> => {
    if (parts.openBox) return parts.openBox(place);
    const { boxAddress, createHttpBox } = await import('@larkhold/box');
    return createHttpBox({ address: boxAddress(place.address, place.path, parts.origin) });
  };
  const without = (name: keyof KeptPost): KeptPost => {
    const { [name]: _gone, ...rest } = kept;
    return rest;
  };
  const look = async (): Promise<void> => {
    const { readAnswer, readDesk } = await import('@larkhold/box');
    const found: BoxTrouble[] = [];
    if (kept.desk) {
      const isHandOver = (text: string): boolean => parseHandOver(text).ok;
      const read = await readDesk(await openBox(kept.desk), kept.desk, parts.now(), isHandOver);
      found.push(...read.troubles);
      await keep({ ...kept, desk: read.desk });
    }
    if (kept.archer?.sent) {
      const read = await readAnswer(await openBox(kept.archer), kept.archer, parts.now());
      if (read.trouble) found.push({ ...read.trouble, title: kept.archer.coach });
      if (read.isNew) await keep({ ...kept, archer: read.post });
    }
    troubles = found;
    tell();
  };
  return {
    get desk() {
      return kept.desk;
    },
    get archer() {
      return kept.archer;
    },
    get troubles() {
      return troubles;
    },
    openDesk: (coach, address) =>
      inTurn(async () => {
        const { createCoachDesk } = await import('@larkhold/box');
        await keep({ ...kept, desk: await createCoachDesk(coach, address) });
      }),
    async invite() {
      const { formatInvite, inviteOf } = await import('@larkhold/box');
      return kept.desk ? formatInvite(inviteOf(kept.desk)) : '';
    },
    answer: (owner, file) =>
      inTurn(async () => {
        const { desk } = kept;
        if (!desk) return undefined;
        const { answerLetter } = await import('@larkhold/box');
        const answered = await answerLetter(await openBox(desk), desk, owner, file, parts.now());
        if (!answered.ok) return answered.trouble;
        await keep({ ...kept, desk: answered.value });
        return undefined;
      }),
    forget: (owner) =>
      inTurn(async () => {
        if (!kept.desk) return;
        const { forgetArcher } = await import('@larkhold/box');
        await keep({ ...kept, desk: await forgetArcher(await openBox(kept.desk), kept.desk, owner) });
      }),
    closeDesk: () =>
      inTurn(async () => {
        let { desk } = kept;
        if (!desk) return;
        const { forgetArcher } = await import('@larkhold/box');
        const box = await openBox(desk);
        for (const owner of Object.keys(desk.archers)) desk = await forgetArcher(box, desk, owner);
        await keep(without('desk'));
      }),
    accept: (invite) =>
      inTurn(async () => {
        const { createArcherPost, leaveCoach } = await import('@larkhold/box');
        if (kept.archer) await leaveCoach(await openBox(kept.archer), kept.archer);
        await keep({ ...kept, archer: await createArcherPost(invite) });
      }),
    send: (text) =>
      inTurn(async () => {
        const { archer } = kept;
        if (!archer) return undefined;
        const { sendHandOver } = await import('@larkhold/box');
        const sent = await sendHandOver(await openBox(archer), archer, text, parts.now());
        if (!sent.ok) return sent.trouble;
        await keep({ ...kept, archer: sent.value });
        return undefined;
      }),
    putAnswerAway: () =>
      inTurn(async () => {
        if (!kept.archer) return;
        const { answer: _read, ...archer } = kept.archer;
        await keep({ ...kept, archer });
      }),
    leave: () =>
      inTurn(async () => {
        if (!kept.archer) return;
        const { leaveCoach } = await import('@larkhold/box');
        await leaveCoach(await openBox(kept.archer), kept.archer);
        await keep(without('archer'));
      }),
    async meet() {
      if (parts.isDrilling() || (!kept.desk && !kept.archer)) return;
      await inTurn(look).catch(parts.report);
    },
    subscribe(fn) {
      listeners.add(fn);
      return () => listeners.delete(fn);
    },
  };
}

async function readKept(store: Store): Promise<KeptPost> {
  const found = (await store.post().catch(() => undefined)) as KeptPost | undefined;
  if (found === undefined) return {};
  const { archerPostSchema, coachDeskSchema } = await import('@larkhold/box');
  const [desk, archer] = [coachDeskSchema.safeParse(found.desk), archerPostSchema.safeParse(found.archer)];
  return { ...(desk.success ? { desk: desk.data } : {}), ...(archer.success ? { archer: archer.data } : {}) };
}
