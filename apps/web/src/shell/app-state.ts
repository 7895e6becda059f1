import {
  createJournal,
  type Journal,
  type Past,
  type Program,
  pastHolds,
  rackPrograms,
  visibleJournal,
} from '@larkhold/engine';
import {
  archerOf,
  createKit,
  type Kit,
  nextTask,
  type Persistence,
  type ReplacedProgram,
  readReplaced,
  StoreError,
} from '@larkhold/store';
import { programInWords } from '@larkhold/words';
import type { App, AppActions, AppView, Refusal } from './app-context.ts';
import { onlyTab } from './drill-lock.ts';
import { foldInTurns, isLong } from './fold-in-turns.ts';
import type { OddEntry } from './odd-entries.ts';
import { createPastKeeper, whenIdle } from './past-keeper.ts';
import { refusalOf } from './refusal-of.ts';
import { type RemovedThing, removedOn } from './removed-thing.ts';
import { createStoredActions } from './stored-actions.ts';
import type { Surroundings } from './surroundings.ts';
import { todaysPrescription } from './todays-prescription.ts';
import { chosenToday, dueMinutes } from './todays-program.ts';
import { createUndrawnEntries } from './undrawn-entries.ts';
import { watchLoss } from './watch-loss.ts';

/** The app's state over its store. */
export interface AppState {
  /** Undefined until the first reading is done. */
  readonly app: App | undefined;
  /** Reads everything again; also for a new day. */
  reload(): Promise<void>;
  /** Says a fault that nobody else has caught. */
  tell(error: unknown): void;
  /** Hears every new view. @returns stops it. */
  subscribe(fn: (app: App) => void): () => void;
}

/**
 * Keeps a view of the store up to date and writes to it.
 * @param around what the app needs from outside
 * @returns the state; call `reload` once
 */
export function createAppState(around: Surroundings): AppState {
  const { store, drillLock = onlyTab } = around;
  const listeners = new Set<(app: App) => void>();
  let app: App | undefined;
  let isDrilling = false;
  let refusal: Refusal | undefined;
  let reading: Promise<void> | undefined;
  let next: Promise<void> | undefined;
  let persistence: Persistence = 'unknown';
  let last: { stored?: Journal; visible: Journal } = { visible: createJournal() };
  const undrawn = createUndrawnEntries();
  const loss = watchLoss(around);
  let kit: Kit = createKit();
  let aside: readonly OddEntry[] = [];
  let removed: readonly RemovedThing[] = [];
  let replaced: ReplacedProgram | undefined;
  let isBegun = false;
  let before: string | undefined;
  const keepPast = createPastKeeper(store);

  /** One reading at a time; whoever asks during one gets the next, which begins when it is done. */
  function reload(): Promise<void> {
    if (reading) {
      next ??= reading
        .catch(() => {}) // reported to those who asked for it
        .then(() => {
          next = undefined;
          return reload();
        });
      return next;
    }
    reading = read().finally(() => {
      reading = undefined;
    });
    return reading;
  }

  async function read(): Promise<void> {
    if (!isBegun) await readRecent();
    isBegun = true;
    const [opened, stored, readKit, running] = await Promise.all([
      store.programs(),
      store.journal(),
      store.kit(),
      store.running(),
    ]);
    kit = readKit;
    loss.see(stored);
    if (last.stored !== stored) last = { stored, visible: undrawn.without(visibleJournal(stored)) };
    await readBeside(opened);
    aside = (await store.setAside()).map((one) => ({ ...one, isListed: false }));
    const found = { opened: opened.filter((program) => !undrawn.has(program)), running };
    try {
      await readAhead(found.opened);
      if (!app) await workOut({ opened: found.opened, journal: last.visible });
      publish(found);
    } catch (error) {
      // Even the choice of today's program failed on an entry: it is looked for in all that was read.
      around.report?.(error);
      if (!leaveOut({ journal: last.visible, programs: found.opened })) {
        // The app still opens, without a journal, and says that something failed; the disk is as it was.
        refusal = refusalOf(error);
        last = { visible: createJournal() };
      }
      publish({ ...found, opened: opened.filter((program) => !undrawn.has(program)) });
    }
  }

  /** What lies beside journal and kit. */
  async function readBeside(opened: readonly Program[]): Promise<void> {
    removed = removedOn(await store.removedToday(), around.today());
    // Without a disk for it there is no way back, and nothing to say.
    const kept: unknown = await store.replacedProgram().catch(() => undefined);
    replaced = readReplaced(kept, around.instant(), (id) => opened.find((one) => one.id === id));
  }

  /** Of a long journal the last weeks come first, with what all before them folds into: today's numbers are whole, the rest comes while idle. */
  async function readRecent(): Promise<void> {
    const recent = await store.recentJournal(around.today());
    if (!recent) return;
    const { past, running } = recent;
    try {
      const opened = await store.programs();
      kit = await store.kit();
      await readBeside(opened); // what was set aside is read with the rest
      const journal = visibleJournal(recent.journal);
      const chosen = await workOut({ opened, journal, past });
      if (!pastHolds(past, chosen, archerOf(kit).ageYears)) return;
      publish({ opened, running, journal, past });
      before = past.before;
    } catch (error) {
      around.report?.(error); // an entry that cannot be drawn: it is looked for in the whole
      return;
    }
    await whenIdle();
  }

  /**
   * Works out today's program and its numbers before they are first drawn, each in a turn of its own: all at once, and the drawing with them, would be
   * a long task on a slow machine. They are kept where they are worked out, so that nothing is done twice.
   */
  async function workOut(from: { opened: readonly Program[]; journal: Journal; past?: Past }): Promise<Program> {
    const known = { ...from, programs: rackOf(from.opened), kit, today: around.today() };
    await nextTask();
    const { chosen, season } = chosenToday(known);
    await nextTask();
    todaysPrescription({ ...known, season }, chosen, dueMinutes({ season, chosen }));
    await nextTask();
    return chosen;
  }

  /** For the next start, while the page is idle. */
  async function keepForNextStart({ view }: App): Promise<void> {
    const { stored, visible } = last;
    const { programs, chosen, season, today } = view;
    if (stored && !isDrilling) await keepPast({ stored, visible, programs, chosen, season, kit, today, before });
  }

  /** @returns whether an entry was found that can't be drawn */
  function leaveOut(drawn: { journal: Journal; programs: readonly Program[] }): boolean {
    const isFound = undrawn.find(drawn, around.today());
    if (isFound) last = { ...last, visible: undrawn.without(last.visible) };
    return isFound;
  }

  /** A long journal is folded while the page gets turns; nothing of it is shown before it is folded whole. */
  async function readAhead(opened: readonly Program[]): Promise<void> {
    const { visible: journal } = last;
    if (!isLong(journal)) return;
    await foldInTurns(journal, archerOf(kit));
    const { chosen } = chosenToday({ journal, programs: rackOf(opened), kit, today: around.today() });
    await foldInTurns(journal, archerOf(kit), chosen);
    await nextTask();
  }

  function rackOf(opened: readonly Program[]): readonly Program[] {
    return rackPrograms(opened).map((program) => programInWords(program));
  }

  function publish({
    opened,
    running,
    journal = last.visible,
    past,
  }: {
    opened: readonly Program[];
    running: AppView['running'];
    journal?: Journal;
    past?: Past;
  }): void {
    const openedIds = new Set(opened.flatMap(({ id }) => id ?? []));
    const programs = rackOf(opened);
    const today = around.today();
    const { chosen, season } = chosenToday({ journal, past, programs, kit, today });
    const view: AppView = {
      ...{ today, programs, openedIds, chosen, season, journal, kit, running },
      ...(past ? { past } : {}),
      removedToday: removed,
      ...{ where: store.where, trouble: store.trouble, refusal, persistence, isDrilling },
      lost: loss.lost,
      replaced,
      oddEntries: [...aside, ...undrawn.entries],
      runsElsewhere: drillLock.isElsewhere,
    };
    show({ view, act });
    if (!past) void keepForNextStart({ view, act }).catch((error: unknown) => around.report?.(error));
  }

  /** Shows a change of what is on no disk. */
  function showNow(changes: Partial<AppView>): void {
    if (app) show({ ...app, view: { ...app.view, ...changes } });
  }

  function show(next: App): void {
    app = next;
    for (const fn of [...listeners]) fn(next);
  }

  /**
   * Does something that writes. Only the store's own trouble is let pass: the value is in memory then, and the trouble is shown. Everything
   * else is reported to the archer. @returns what the work gave, or `undefined` where it failed
   */
  async function attempt<T>(thing: Refusal['thing'], work: () => Promise<T>): Promise<{ given?: T } | undefined> {
    const done = await work().then(
      (given) => ({ given }),
      (error: unknown) => {
        if (error instanceof StoreError) return {};
        refusal = refusalOf(error);
        if (refusal.thing === 'fault') around.report?.(error);
        return undefined;
      },
    );
    if (done && refusal?.thing === thing) refusal = undefined;
    await reload().catch((error: unknown) => {
      refusal = refusalOf(error);
      around.report?.(error);
      showNow({ refusal });
    });
    return done;
  }

  const act: AppActions = {
    ...createStoredActions(around, () => app?.view, attempt),
    takeDrill: () => drillLock.take(),
    freeDrill: () => {
      drillLock.free();
      void reload(); // what is left of the drill is shown as it is now
    },
    setDrilling(next) {
      isDrilling = next;
      showNow({ isDrilling });
    },
    keepStored: async () => {
      persistence = await around.askForPersistence();
      await reload();
    },
    checkStored: async () => {
      const report = await store.integrityReport();
      await reload();
      return report;
    },
    acceptLoss() {
      loss.accept();
      showNow({ lost: loss.lost });
    },
    leaveOut(error) {
      around.report?.(error);
      if (!app) return false;
      const { journal, programs } = app.view;
      if (!leaveOut({ journal, programs })) return false;
      // Drawn again in a turn of its own: the drawing that failed is still under way.
      void reload();
      return true;
    },
    removeOdd(entry) {
      const { table, key, value, isListed } = entry;
      if (isListed) undrawn.forget(Object(value));
      return attempt('fault', () => (isListed ? store.removeListed(table, key) : store.removeAside(entry))).then(
        Boolean,
      );
    },
    dismissRefusal() {
      refusal = undefined;
      showNow({ refusal });
    },
    trySound: (kind) => around.trySound(kind, kit),
    ...(around.box ? { box: around.box } : {}),
    ...(around.post ? { post: around.post } : {}),
    ...(around.squad ? { squad: around.squad } : {}),
    newId: around.newId,
    instant: around.instant,
  };

  store.subscribe(() => void reload());
  drillLock.subscribe(() => void reload());
  return {
    get app() {
      return app;
    },
    reload,
    tell(error) {
      refusal = refusalOf(error);
      showNow({ refusal });
    },
    subscribe(fn) {
      listeners.add(fn);
      if (app) fn(app);
      return () => listeners.delete(fn);
    },
  };
}
