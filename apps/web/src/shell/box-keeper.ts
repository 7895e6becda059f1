import type { BoxAdapter, BoxLink, Pairing, RoundEntry, RoundNews } from '@larkhold/box';
import { deviceKitOf, readDeviceKit, type Store, type TakenIn } from '@larkhold/store';
import { type BackupFolder, isAllowed } from './backup-folder.ts';

/** How long a change rests before the box is met, so that a page that is typed makes one round, milliseconds. */
export const RESTS_MS = 10_000;
/** After a trouble of the host the next try waits, twice as long each time. */
export const FIRST_WAIT_MS = 60_000;
/** The longest wait between two tries, milliseconds. */
export const LONGEST_WAIT_MS = 3_600_000;
const LOG_LENGTH = 20;

/** What is kept of a box on this device. */
export interface KeptBox {
  link: BoxLink;
  folder?: BackupFolder;
}

/** What the keeper needs from outside. */
export interface BoxKeeperParts {
  store: Store;
  /** The app's own address. */
  origin: string;
  now(): string;
  /** Nothing is met while a drill fills the screen. */
  isDrilling(): boolean;
  /** Hears of what nobody expects: a journal that cannot be read or written. */
  report(error: unknown): void;
  /** Opens the box; the host or folder of the link unless a test says otherwise. */
  openBox?(kept: KeptBox, asks: boolean): Promise<BoxAdapter | undefined>;
}

/** How a device joins a box. */
export interface JoinOptions {
  folder?: BackupFolder;
  takesControls?: boolean;
}

/** Keeps this device in the archer's box: when it meets, what it says, and what can be undone. */
export interface BoxKeeper {
  /** The way to the box; undefined until the archer has one. */
  readonly link: BoxLink | undefined;
  /** A round is under way. */
  readonly isMeeting: boolean;
  /** The last round here brought something that can be taken back. */
  readonly canUndo: boolean;
  /** The device whose controls were copied last, while that can be undone. */
  readonly controlsOf: string | undefined;
  /**
   * Makes or joins a box, and meets it.
   * @param options `takesControls`: of the device that wrote last, see `takeControls`
   * @returns what its first round did or what was wrong with it
   */
  join(pairing: Pairing, title: string, options?: JoinOptions): Promise<RoundEntry | undefined>;
  /** Takes over another device's controls, sound and screen; from then on each goes its own way. @returns whether it had put any into the box */
  takeControls(device: string): Promise<boolean>;
  /** Takes that back: only what still is as it came. */
  leaveControls(): Promise<void>;
  /** Meets the box now. A press, and a network that has come back, do not wait after a trouble; a press may let the browser ask for leave to a folder. */
  meet(why?: 'press' | 'online'): Promise<void>;
  /** Leaves the box: what is here stays here, and this device's files go. */
  leave(): Promise<void>;
  /** Takes another device's files out of the box: one that was lost or given away. */
  forget(device: string): Promise<void>;
  /** Takes back what the last round brought, and meets no more until `resume`. */
  undo(): Promise<void>;
  resume(): Promise<void>;
  /** Hears of every change. @returns stops it */
  subscribe(fn: () => void): () => void;
}

/** A drill began in the middle of a round, which ends there and is made again after the drill. */
const DRILL_BEGAN = new Error('a drill began');

/**
 * Makes the keeper and reads what is kept.
 * @param parts see `BoxKeeperParts`
 * @returns the keeper
 */
export async function createBoxKeeper(parts: BoxKeeperParts): Promise<BoxKeeper> {
  const { store } = parts;
  const listeners = new Set<() => void>();
  let kept = await readKept(store);
  let isMeeting = false;
  /** The round that is under way, or the last one. */
  let running: Promise<void> = Promise.resolve();
  let taken: TakenIn[] = [];
  let controls: { title: string; taken: TakenIn } | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let waitMs = 0;
  let notBefore = 0;
  /** The journal has changed since it was last read for the box. */
  let isChanged = true;
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
  const openBox = parts.openBox ?? ((one, asks) => openBoxOf(one, parts.origin, asks));
  const logged = (link: BoxLink, isGood: boolean, news: RoundNews[]): BoxLink =>
    news.length === 0 ? link : { ...link, log: [{ at: parts.now(), isGood, news }, ...link.log].slice(0, LOG_LENGTH) };
  /** Tries again by itself: an edit that has rested, or a host that was in trouble. */
  const meetAfter = (ms: number): void => {
    clearTimeout(timer);
    timer = setTimeout(() => void meet(), ms);
  };

  const meetNow = async (asks: boolean): Promise<void> => {
    if (!kept || parts.isDrilling()) return;
    const { deriveBoxKeys, meetBox, newsOf } = await import('@larkhold/box');
    const box = await openBox(kept, asks);
    if (!box) {
      const trouble = { kind: 'noLeave' as const };
      const isSaid = kept.link.log[0]?.news.some((one) => one.what === 'trouble' && one.trouble.kind === 'noLeave');
      if (!isSaid) await keep({ ...kept, link: logged(kept.link, false, [{ what: 'trouble', trouble }]) });
      return;
    }
    const brought: TakenIn[] = [];
    const before = kept;
    const round = await meetBox({
      ...{
        box: untilDrill(box, parts.isDrilling),
        keys: await deriveBoxKeys(kept.link),
        link: kept.link,
        now: parts.now,
      },
      readJournal: () => {
        isChanged = false;
        return store.journal();
      },
      readKit: async () => deviceKitOf(await store.kit()),
      isUnchanged: () => !isChanged,
      mergeIn: async (journal) => {
        const one = await store.takeIn({ journal });
        if (one.values.length > 0) brought.push(one);
      },
      keep: (link) => keep({ ...before, link }),
    });
    if (!kept) return; // the box was left meanwhile
    if (brought.length > 0) taken = brought;
    const isGood = round.link.lastRoundAt !== before.link.lastRoundAt;
    isChanged ||= !isGood;
    waitMs = isGood ? 0 : Math.min(Math.max(FIRST_WAIT_MS, waitMs * 2), LONGEST_WAIT_MS);
    notBefore = performance.now() + waitMs;
    if (waitMs > 0) meetAfter(waitMs);
    await keep({ ...before, link: logged(round.link, isGood, newsOf(round)) });
  };
  const meet = async (why?: 'press' | 'online'): Promise<void> => {
    if (!kept || isMeeting || parts.isDrilling() || kept.link.isPaused) return;
    if (why === undefined && performance.now() < notBefore) return;
    isMeeting = true;
    tell();
    running = makeRound(why);
    await running;
  };
  const makeRound = async (why?: 'press' | 'online'): Promise<void> => {
    try {
      // One tab at a time: two would put one file.
      const locks = globalThis.navigator?.locks;
      const asks = why === 'press';
      await (locks ? locks.request('larkhold-box', () => meetNow(asks)) : meetNow(asks));
    } catch (error) {
      isChanged = true;
      if (error !== DRILL_BEGAN) parts.report(error);
    } finally {
      isMeeting = false;
      tell();
    }
  };

  const takeControls = async (device: string): Promise<boolean> => {
    const { title, kit } = kept?.link.met[device] ?? {};
    if (kit === undefined) return false;
    controls = { title: title || device, taken: await store.takeIn({ kit: readDeviceKit(kit) }) };
    tell();
    return true;
  };
  const leaveControls = async (): Promise<void> => {
    if (controls) await store.takeBack(controls.taken);
    controls = undefined;
    tell();
  };

  store.subscribe((changed) => {
    if (changed.every((table) => table === 'handles')) return; // what the rounds keep themselves
    isChanged = true;
    // After a trouble the next try is set already, and takes this change along.
    if (kept && waitMs === 0) meetAfter(RESTS_MS);
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
    get controlsOf() {
      return controls?.title;
    },
    async join(pairing, title, { folder, takesControls } = {}) {
      const { createBoxLink } = await import('@larkhold/box');
      // A round of another box would put that box's link in the place of this one.
      await running;
      await keep({ link: createBoxLink(pairing, title), ...(folder ? { folder } : {}) });
      await meet('press');
      await running; // of a second press at the same moment
      const met = Object.entries(kept?.link.met ?? {}).filter(([, { kit }]) => kit !== undefined);
      const [last] = met.sort(([, a], [, b]) => (a.madeAt < b.madeAt ? 1 : -1));
      if (takesControls && last) await takeControls(last[0]);
      return kept?.link.log[0];
    },
    takeControls,
    leaveControls,
    meet,
    async leave() {
      clearTimeout(timer);
      await running; // or it would put this device's file after it was removed
      const left = kept;
      clearTimeout(timer);
      await keep(undefined);
      const box = left && (await openBox(left, false));
      const { file, before, coming } = left?.link.own ?? {};
      for (const name of [file, before, coming]) if (name !== undefined) await box?.remove(name);
    },
    async forget(device) {
      if (!kept) return;
      const { readBoxFileName } = await import('@larkhold/box');
      const box = await openBox(kept, true);
      const listed = await box?.list();
      for (const { name } of listed?.ok ? listed.value : []) {
        if (readBoxFileName(name)?.owner === device) await box?.remove(name);
      }
      const { [device]: _gone, ...met } = kept.link.met;
      if (listed?.ok) await keep({ ...kept, link: { ...kept.link, met } });
    },
    async undo() {
      if (!kept) return;
      await leaveControls();
      for (const one of taken.toReversed()) await store.takeBack(one);
      taken = [];
      await keep({ ...kept, link: { ...logged(kept.link, true, [{ what: 'takenBack' }]), isPaused: true } });
    },
    async resume() {
      if (!kept) return;
      const { isPaused: _paused, ...link } = kept.link;
      // What was undone is read again, as all devices must end equal.
      await keep({ ...kept, link: { ...link, met: {} } });
      await meet('press');
    },
    subscribe(fn) {
      listeners.add(fn);
      return () => listeners.delete(fn);
    },
  };
}

async function readKept(store: Store): Promise<KeptBox | undefined> {
  const found = (await store.boxLink().catch(() => undefined)) as { link?: unknown; folder?: BackupFolder } | undefined;
  if (found === undefined) return undefined;
  const { readBoxLink } = await import('@larkhold/box');
  const link = readBoxLink(found.link);
  return link && { link, ...(found.folder ? { folder: found.folder } : {}) };
}

async function openBoxOf({ link, folder }: KeptBox, origin: string, asks: boolean): Promise<BoxAdapter | undefined> {
  const { boxAddress, createFolderBox, createHttpBox, deriveBoxKeys } = await import('@larkhold/box');
  if (link.address !== undefined) {
    const { path } = await deriveBoxKeys(link);
    return createHttpBox({ address: boxAddress(link.address, path, origin) });
  }
  return folder && (await isAllowed(folder, asks)) ? createFolderBox(folder) : undefined;
}

/** A box that ends the round as soon as a drill fills the screen. */
function untilDrill(box: BoxAdapter, isDrilling: () => boolean): BoxAdapter {
  const or =
    <A extends unknown[], T>(work: (...args: A) => Promise<T>) =>
    async (...args: A): Promise<T> => {
      if (isDrilling()) throw DRILL_BEGAN;
      const answer = await work(...args);
      if (isDrilling()) throw DRILL_BEGAN;
      return answer;
    };
  return { list: or(box.list), get: or(box.get), put: or(box.put), remove: or(box.remove) };
}
