import { canonicalText, type Journal } from '@larkhold/engine';
import { type BoxAdapter, type BoxEntry, LARGEST_FILE_BYTES } from './box-adapter.ts';
import { type BoxFileName, boxFileName, readBoxFileName } from './box-file-name.ts';
import { type BoxLink, createDeviceName } from './box-link.ts';
import { type BoxTrouble, isOfHost } from './box-trouble.ts';
import type { BoxKeys } from './pairing.ts';
import { type BoxState, openState, sealState } from './sealed-state.ts';
import type { Cipher } from './sealed-text.ts';

/** What a round needs. */
export interface RoundParts {
  box: BoxAdapter;
  keys: BoxKeys;
  link: BoxLink;
  /** This device's journal as it is stored. */
  readJournal: () => Promise<Journal>;
  /** This device's own controls, sound and screen, for a new device to take over. */
  readKit?: () => Promise<Readonly<Record<string, unknown>>>;
  /** Tells that neither has changed since they were read last: then an idle round asks for a list and nothing else. */
  isUnchanged?: () => boolean;
  /** Merges what another device wrote, all or nothing. */
  mergeIn: (journal: Journal) => Promise<void>;
  /** Keeps the link in the middle of a round, before a file is put: an app that is closed then knows its own file again. */
  keep?: (link: BoxLink) => Promise<void>;
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

type Found = BoxEntry & BoxFileName;

/**
 * One round: reads what the other devices wrote since the last one, merges it, and puts this device's own file where it has changed. A file is named by its
 * content and written once, so no write takes the place of another. A file that is not whole, or not what it says, is left alone and told of once.
 * @param parts see `RoundParts`.
 * @returns how it ended; it never rejects but where reading or merging the journal does.
 */
export async function meetBox(parts: RoundParts): Promise<Round> {
  const listed = await parts.box.list();
  if (!listed.ok) return { link: parts.link, merged: [], isPushed: false, troubles: [listed.trouble] };
  const link = { ...parts.link, own: { ...parts.link.own }, met: { ...parts.link.met } };
  const round: Round = { link, merged: [], isPushed: false, troubles: [] };
  const found = byOwner(listed.value);
  link.told = Object.fromEntries(
    [...found.values()].flat().flatMap(({ name }) => {
      const told = Object.hasOwn(link.told, name) ? link.told[name] : undefined;
      return told ? [[name, told]] : [];
    }),
  );
  await keepOwnName(parts, round, found.get(link.device) ?? []);
  for (const [device, files] of found) {
    if (device !== round.link.device) await meetDevice(parts, round, device, files);
  }
  await pushOwn(parts, round, found.get(round.link.device) ?? []);
  // A host that failed half-way makes no good round; a bad file of another device does not spoil one.
  if (!round.troubles.some(isOfHost)) round.link.lastRoundAt = parts.now();
  return round;
}

/** The files of each owner, the latest turn first. */
function byOwner(entries: readonly BoxEntry[]): Map<string, Found[]> {
  const found = new Map<string, Found[]>();
  for (const entry of entries) {
    const named = readBoxFileName(entry.name);
    if (named) found.set(named.owner, [...(found.get(named.owner) ?? []), { ...entry, ...named }]);
  }
  for (const files of found.values()) files.sort((a, b) => b.turn - a.turn || (a.name < b.name ? -1 : 1));
  return found;
}

/**
 * Reads a device's latest file that can be read; of copies that have one name and one turn, all. Also one that is older than what was read before: merging it
 * changes nothing, and a device that was put back from an old backup may have written it.
 */
async function meetDevice(parts: RoundParts, round: Round, device: string, files: readonly Found[]): Promise<void> {
  const known = round.link.met[device];
  const ofKnown = known ? { title: known.title } : {};
  let good: MetDevice | undefined;
  for (const file of files) {
    if (good !== undefined && file.turn < good.turn) return;
    if (known?.files.includes(file.name)) {
      good ??= known;
      continue;
    }
    const read = await readFile(parts, round, file);
    if ('trouble' in read) {
      tell(round, file, { ...read.trouble, ...ofKnown });
      continue;
    }
    const { title, turn, madeAt, journal, kit } = read.state;
    if (known && turn < known.turn) tell(round, file, { kind: 'replayed', file: file.name, ...ofKnown });
    await parts.mergeIn(journal);
    const files = good?.turn === turn ? good.files : known?.turn === turn ? known.files : [];
    const metAt = parts.now();
    good = { title, turn, madeAt, metAt, files: [...files, file.name].slice(-100), ...(kit ? { kit } : {}) };
    round.link.met[device] = good;
    if (!round.merged.includes(title || device)) round.merged.push(title || device);
  }
}

type MetDevice = BoxLink['met'][string];

/** Tells of a bad file once, and of each trouble of the host once in a round. */
function tell(round: Round, { name, mark }: Found, trouble: BoxTrouble): void {
  const { kind } = trouble;
  if (kind === 'missing') return; // its device has put another one meanwhile
  if (isOfHost(trouble)) {
    if (!round.troubles.some((one) => one.kind === kind)) round.troubles.push(trouble);
    return;
  }
  const told = toldOf(round, name, mark);
  if (told?.kind === kind) return;
  round.link.told[name] = { mark, kind };
  round.troubles.push(trouble);
}

function toldOf({ link }: Round, name: string, mark: string): { kind: string } | undefined {
  const told = Object.hasOwn(link.told, name) ? link.told[name] : undefined;
  return told?.mark === mark ? told : undefined;
}

async function readFile(
  { box, keys, cipher }: RoundParts,
  round: Round,
  { name, bytes, mark }: Found,
): Promise<{ state: BoxState; mark: string } | { trouble: BoxTrouble }> {
  const told = toldOf(round, name, mark);
  // What was bad stays bad; what a newer app wrote can be read once this one is new.
  if (told !== undefined && told.kind !== 'newer' && told.kind !== 'replayed')
    return { trouble: { kind: 'missing', file: name } };
  if (bytes > LARGEST_FILE_BYTES) return { trouble: { kind: 'enormous', file: name } };
  const got = await box.get(name);
  if (!got.ok) return got;
  const state = await openState(got.value.content, name, keys, cipher);
  return state.ok ? { state: state.value, mark: got.value.mark } : state;
}

/**
 * Two devices can come to have one name: a profile that was copied, a device put back from an old backup. Whoever finds a file under its own name that it did
 * not write leaves it to be read as another device's, and goes on under a new name. A file of its own that the host spoiled is put again.
 */
async function keepOwnName(parts: RoundParts, round: Round, files: readonly Found[]): Promise<void> {
  const { link } = round;
  const { own } = link;
  const came = files.find(({ name }) => name === own.coming);
  if (came) {
    // The app was closed between putting this file and knowing it.
    link.turn = came.turn;
    link.own = { ...own, file: came.name, before: own.file, coming: undefined, mark: undefined, digest: undefined };
  }
  const current = files.find(({ name }) => name === link.own.file);
  if (current && current.mark !== link.own.mark) {
    const read = await readFile(parts, round, current);
    if ('state' in read) link.own.mark = current.mark;
    else if (isOfHost(read.trouble)) round.troubles.push(read.trouble);
    else {
      round.troubles.push({ ...read.trouble, title: link.title });
      await parts.box.remove(current.name);
      link.own.digest = undefined;
    }
  }
  const ours = new Set([link.own.file, link.own.before]);
  let isTaken = false;
  for (const file of files) {
    if (ours.has(file.name)) continue;
    const read = await readFile(parts, round, file);
    if ('trouble' in read) tell(round, file, { ...read.trouble, title: link.title });
    else if (file.turn < link.turn) {
      await parts.mergeIn(read.state.journal); // it changes nothing, unless a copy of this device wrote it
      tell(round, file, { kind: 'replayed', file: file.name, title: link.title });
      await parts.box.remove(file.name);
    } else isTaken = true;
  }
  if (!isTaken) return;
  round.troubles.push({ kind: 'nameTaken' });
  const left = [link.own.file, link.own.before].filter((name) => name !== undefined);
  round.link = { ...link, device: createDeviceName(), turn: 0, own: { left } };
}

async function pushOwn(parts: RoundParts, round: Round, files: readonly Found[]): Promise<void> {
  const { box, keys, cipher, now } = parts;
  const { link } = round;
  const { own, device, title } = link;
  const isThere = files.some(({ name }) => name === own.file);
  if (isThere && own.digest !== undefined && parts.isUnchanged?.()) return;
  const journal = await parts.readJournal();
  const kit = await parts.readKit?.();
  const digest = await digestOf({ journal, title, kit });
  if (own.digest === digest && isThere) return;
  const turn = link.turn + 1;
  const madeAt = now();
  const content = await sealState({ device, title, turn, madeAt, journal, ...(kit ? { kit } : {}) }, keys, cipher);
  const name = await boxFileName(device, turn, content);
  round.link = { ...link, own: { ...own, coming: name } };
  await parts.keep?.(round.link);
  const put = await box.put(name, content);
  if (!put.ok) {
    round.troubles.push(put.trouble);
    return;
  }
  // The one before stays, for whoever finds this one spoiled.
  for (const old of [own.before, ...(own.left ?? [])]) if (old !== undefined && old !== name) await box.remove(old);
  round.link = { ...link, turn, own: { file: name, before: own.file, mark: put.value, digest, madeAt } };
  round.isPushed = true;
}

/** Tells whether what a device would put has changed. */
async function digestOf(content: Pick<BoxState, 'journal' | 'title' | 'kit'>): Promise<string> {
  const text = canonicalText(content);
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
