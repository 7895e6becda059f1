import type { BoxAdapter, BoxLink, Pairing, Round, RoundEntry } from '@larkhold/box';
import type { Store, TakenIn } from '@larkhold/store';
import { type BackupFolder, isAllowed } from './backup-folder.ts';

/** A change rests so long before the box is met, so that a page that is typed makes one round, milliseconds. */
const RESTS_MS = 10_000;
/** After a trouble of the host the next try waits, twice as long each time. */
const FIRST_WAIT_MS = 60_000;
const LONGEST_WAIT_MS = 3_600_000;
const LOG_LENGTH = 20;

/** What is kept of a box on this device. */
interface KeptBox {
  link: BoxLink;
  folder?: BackupFolder;
}

/** What the keeper stands on. */
export interface BoxKeeperParts {
  store: Store;
  /** The app's own address. */
  origin: string;
  now(): string;
  /** Nothing is met while a drill fills the screen. */
  isDrilling(): boolean;
}

/** Keeps this device in the archer's box: when it meets, what it says, and what can be undone. */
export interface BoxKeeper {
  /** The way to the box; undefined while there is none. */
  readonly link: BoxLink | undefined;
  /** A round is under way. */
  readonly isMeeting: boolean;
  /** The last round here brought something that can be taken back. */
  readonly canUndo: boolean;
  /** Makes or joins a box, and meets it. @returns what was wrong, in plain words; undefined where it went well */
  join(pairing: Pairing, title: string, folder?: BackupFolder): Promise<string | undefined>;
  /** Meets the box now; a press may let the browser ask for leave to a folder. */
  meet(isPress?: boolean): Promise<void>;
  /** Leaves the box: what is here stays here, and this device's file goes. */
  leave(): Promise<void>;
  /** Takes back what the last round brought, and meets no more until `resume`. */
  undo(): Promise<void>;
  resume(): Promise<void>;
  /** Hears of every change. @returns stops it */
  subscribe(fn: () => void): () => void;
}

/**
 * Makes the keeper and reads what is kept.
 * @param parts see `BoxKeeperParts`
 * @returns the keeper
 */
export async function createBoxKeeper(parts: BoxKeeperParts): Promise<BoxKeeper> {
  const { store } = parts;
  const listeners = new Set<() => void>();
  let kept = (await store.boxLink().catch(() => undefined)) as KeptBox | undefined;
  let isMeeting = false;
  let taken: TakenIn[] = [];
  let timer: ReturnType<typeof setTimeout> | undefined;
  let waitMs = 0;
  let notBefore = 0;
  store.nameDevice(kept?.link.device);

  const tell = (): void => {
    for (const fn of [...listeners]) fn();
  };
  const keep = async (next: KeptBox | undefined): Promise<void> => {
    kept = next;
    store.nameDevice(next?.link.device);
    await store.putBoxLink(next).catch(() => undefined); // told by the store's trouble
    tell();
  };
  const open = async (
    { link, folder }: KeptBox,
    asks: boolean,
  ): Promise<{ box: BoxAdapter; path: string } | undefined> => {
    const { boxAddress, createFolderBox, createHttpBox, deriveBoxKeys } = await import('@larkhold/box');
    const { path } = await deriveBoxKeys(link);
    if (link.address !== undefined)
      return { box: createHttpBox({ address: boxAddress(link.address, path, parts.origin) }), path };
    return folder && (await isAllowed(folder, asks)) ? { box: createFolderBox(folder), path } : undefined;
  };
  const logged = (link: BoxLink, entry: RoundEntry): BoxLink => ({
    ...link,
    log: [entry, ...link.log].slice(0, LOG_LENGTH),
  });

  const meetNow = async (asks: boolean): Promise<void> => {
    if (!kept) return;
    const { deriveBoxKeys, meetBox } = await import('@larkhold/box');
    const opened = await open(kept, asks);
    if (!opened) {
      const lines = ['The browser’s leave to the folder has lapsed. Press “Meet now” to give it again.'];
      return keep({ ...kept, link: logged(kept.link, { at: parts.now(), isGood: false, lines }) });
    }
    const brought: TakenIn[] = [];
    const round = await meetBox({
      ...{ box: opened.box, keys: await deriveBoxKeys(kept.link), link: kept.link, now: parts.now },
      readJournal: () => store.journal(),
      mergeIn: async (journal) => {
        const one = await store.takeIn({ journal });
        if (one.values.length > 0) brought.push(one);
      },
    });
    if (brought.length > 0) taken = brought;
    const isGood = round.link.lastRoundAt !== kept.link.lastRoundAt;
    waitMs = isGood ? 0 : Math.min(Math.max(FIRST_WAIT_MS, waitMs * 2), LONGEST_WAIT_MS);
    notBefore = Date.now() + waitMs;
    const lines = linesOf(round);
    await keep({
      ...kept,
      link: lines.length === 0 ? round.link : logged(round.link, { at: parts.now(), isGood, lines }),
    });
  };
  const meet = async (isPress = false): Promise<void> => {
    if (!kept || isMeeting || parts.isDrilling() || kept.link.isPaused || (!isPress && Date.now() < notBefore)) return;
    isMeeting = true;
    tell();
    try {
      // One tab at a time: two would put one file.
      const locks = globalThis.navigator?.locks;
      await (locks ? locks.request('larkhold-box', () => meetNow(isPress)) : meetNow(isPress));
    } finally {
      isMeeting = false;
      tell();
    }
  };

  store.subscribe(() => {
    if (!kept || isMeeting) return;
    clearTimeout(timer);
    timer = setTimeout(() => void meet(), RESTS_MS);
  });
  return {
    get link() {
      return kept?.link;
    },
    get isMeeting() {
      return isMeeting;
    },
    get canUndo() {
      return taken.length > 0;
    },
    async join(pairing, title, folder) {
      const { createBoxLink } = await import('@larkhold/box');
      await keep({ link: createBoxLink(pairing, title), ...(folder ? { folder } : {}) });
      await meet(true);
      const [last] = kept?.link.log ?? [];
      return last && !last.isGood ? last.lines.join(' ') : undefined;
    },
    meet,
    async leave() {
      const left = kept;
      await keep(undefined);
      const opened = left && (await open(left, false));
      for (const end of ['age', 'prev.age']) await opened?.box.remove(`${left?.link.device}.${end}`);
    },
    async undo() {
      if (!kept) return;
      for (const one of taken.toReversed()) await store.takeBack(one);
      taken = [];
      const lines = ['What the last round brought was taken back. This device waits until you let it meet again.'];
      await keep({ ...kept, link: { ...logged(kept.link, { at: parts.now(), isGood: true, lines }), isPaused: true } });
    },
    async resume() {
      if (!kept) return;
      const { isPaused: _paused, ...link } = kept.link;
      // What was taken back is read again, as all devices shall end equal.
      await keep({ ...kept, link: { ...link, met: {} } });
      await meet(true);
    },
    subscribe(fn) {
      listeners.add(fn);
      return () => listeners.delete(fn);
    },
  };
}

/** What a round did, one line each; none where there was nothing to do. */
function linesOf({ merged, isPushed, troubles }: Round): string[] {
  return [
    ...merged.map((title) => `News of ${title} came in.`),
    ...(isPushed && merged.length === 0 ? ['What is new here went out.'] : []),
    ...troubles.map(({ message }) => message),
  ];
}
