import { canonicalText, type Journal } from '@larkhold/engine';
import { type BoxAdapter, type BoxEntry, LARGEST_FILE_BYTES } from './box-adapter.ts';
import { type BoxLink, createDeviceName } from './box-link.ts';
import { type BoxTrouble, describeBoxTrouble } from './box-trouble.ts';
import type { BoxKeys } from './pairing.ts';
import { type BoxState, type Cipher, openState, sealState } from './sealed-file.ts';

/** What a round needs. */
export interface RoundParts {
  box: BoxAdapter;
  keys: BoxKeys;
  link: BoxLink;
  /** This device's journal as it is stored. */
  readJournal: () => Promise<Journal>;
  /** Merges what another device wrote, all or nothing. */
  mergeIn: (journal: Journal) => Promise<void>;
  /** The instant, ISO 8601 UTC. */
  now: () => string;
  /** The box's own unless a test says otherwise. */
  cipher?: Cipher;
}

/** How a round ended. */
export interface Round {
  /** The link as it is now; to be kept. */
  link: BoxLink;
  /** Titles of the devices whose news were merged. */
  merged: string[];
  /** This device's file was put. */
  isPushed: boolean;
  /** What was wrong; empty where nothing was. */
  troubles: BoxTrouble[];
}

/**
 * One round: reads what the other devices wrote since the last one, merges it, and puts this device's own file where it has changed. A device writes
 * only its own file, so no two writes collide. A file that is not whole, or not what it says, is left alone and told of.
 * @param parts see `RoundParts`.
 * @returns how it ended; it never rejects but where reading or merging the journal does.
 */
export async function meetBox(parts: RoundParts): Promise<Round> {
  const listed = await parts.box.list();
  if (!listed.ok) return { link: parts.link, merged: [], isPushed: false, troubles: [listed.trouble] };
  const round: Round = {
    link: { ...parts.link, met: { ...parts.link.met } },
    merged: [],
    isPushed: false,
    troubles: [],
  };
  const entries = new Map(listed.value.map((entry) => [entry.name, entry]));
  await keepOwnName(parts, round, entries);
  for (const entry of entries.values()) {
    const device = deviceOf(entry.name);
    if (device !== undefined && device !== round.link.device) await meetDevice(parts, round, entry, device);
  }
  await pushOwn(parts, round, entries);
  // A host that failed half-way makes no good round; a bad file of another device does not spoil one.
  if (!round.troubles.some(({ kind }) => hostKinds.has(kind))) round.link.lastRoundAt = parts.now();
  return round;
}

/** Troubles of the host, after which a round is made again later. */
const hostKinds: ReadonlySet<string> = new Set(['gone', 'slow', 'full', 'refused', 'fault', 'no box']);

async function meetDevice(
  { box, keys, cipher, mergeIn, now }: RoundParts,
  round: Round,
  entry: BoxEntry,
  device: string,
): Promise<void> {
  const known = round.link.met[device];
  if (known !== undefined && entry.mark !== '' && known.mark === entry.mark) return;
  const read = await readFile({ box, keys, cipher }, entry);
  if ('trouble' in read) {
    round.troubles.push(read.trouble);
    // The one before it may tell something that has not been read yet.
    const before = await box.get(`${device}.prev.age`);
    const state = before.ok ? await openState(before.value.content, `${device}.prev.age`, keys, cipher) : before;
    if (state.ok && state.value.turn > (known?.turn ?? -1)) await take(state.value, known?.mark ?? '');
    return;
  }
  if (known !== undefined && read.state.turn < known.turn) {
    round.troubles.push(describeBoxTrouble('replayed', entry.name));
    return;
  }
  await take(read.state, read.mark);

  async function take(state: BoxState, mark: string): Promise<void> {
    await mergeIn(state.journal);
    const { title, turn, madeAt } = state;
    round.link.met[device] = { title, turn, madeAt, mark, metAt: now() };
    round.merged.push(title || device);
  }
}

async function readFile(
  { box, keys, cipher }: Pick<RoundParts, 'box' | 'keys' | 'cipher'>,
  { name, bytes }: BoxEntry,
): Promise<{ state: BoxState; mark: string } | { trouble: BoxTrouble }> {
  if (bytes > LARGEST_FILE_BYTES) return { trouble: describeBoxTrouble('enormous', name) };
  const got = await box.get(name);
  if (!got.ok) return got;
  const state = await openState(got.value.content, name, keys, cipher);
  return state.ok ? { state: state.value, mark: got.value.mark } : state;
}

/**
 * Two devices can come to have one name: a profile that was copied, a device put back from an old backup. Whoever finds under its own name what it did not
 * write merges that as another device's, and goes on under a new name.
 */
async function keepOwnName(parts: RoundParts, round: Round, entries: ReadonlyMap<string, BoxEntry>): Promise<void> {
  const { link } = round;
  const name = `${link.device}.age`;
  const entry = entries.get(name);
  if (entry === undefined || (link.ownMark !== undefined && entry.mark === link.ownMark)) return;
  const read = await readFile(parts, entry);
  if ('trouble' in read) {
    // Our own file is not as we put it: it is put again, whole.
    if (!hostKinds.has(read.trouble.kind)) round.link = { ...link, ownDigest: undefined, ownMark: undefined };
    if (read.trouble.kind !== 'missing') round.troubles.push(read.trouble);
    return;
  }
  if (read.mark === link.ownMark) return;
  const isOurs = read.state.turn === link.turn && read.state.madeAt === (link.lastPutAt ?? '');
  if (isOurs) {
    round.link = { ...link, ownMark: read.mark };
    return;
  }
  if (read.state.turn < link.turn) {
    // An old file of ours was played back: it is put again.
    round.troubles.push(describeBoxTrouble('replayed', name));
    round.link = { ...link, ownDigest: undefined, ownMark: undefined };
    return;
  }
  round.troubles.push(describeBoxTrouble('changed', name));
  round.link = { ...link, device: createDeviceName(), turn: 0, ownMark: undefined, ownDigest: undefined };
}

async function pushOwn(
  { box, keys, cipher, readJournal, now }: RoundParts,
  round: Round,
  entries: ReadonlyMap<string, BoxEntry>,
): Promise<void> {
  const { link } = round;
  const journal = await readJournal();
  const digest = await digestOf(journal, link.title);
  const name = `${link.device}.age`;
  if (link.ownDigest === digest && entries.has(name)) return;
  const turn = link.turn + 1;
  const madeAt = now();
  const content = await sealState({ device: link.device, title: link.title, turn, madeAt, journal }, keys, cipher);
  const before = entries.has(name) ? await box.get(name) : undefined;
  if (before?.ok && (await openState(before.value.content, name, keys, cipher)).ok) {
    const kept = await box.put(`${link.device}.prev.age`, new Uint8Array(before.value.content));
    if (!kept.ok) {
      round.troubles.push(kept.trouble);
      return;
    }
  }
  const put = await box.put(name, content);
  if (!put.ok) {
    round.troubles.push(put.trouble);
    return;
  }
  round.link = { ...link, turn, ownMark: put.value, ownDigest: digest, lastPutAt: madeAt };
  round.isPushed = true;
}

function deviceOf(name: string): string | undefined {
  return /^([a-z0-9]{1,16})\.age$/.exec(name)?.[1];
}

/** Tells whether what a device would put has changed. */
async function digestOf(journal: Journal, title: string): Promise<string> {
  const text = canonicalText({ journal, title });
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
