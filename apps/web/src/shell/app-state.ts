import {
  builtInPrograms,
  type CueKind,
  chosenProgram,
  createJournal,
  demoDiary,
  type Journal,
  type Program,
  visibleJournal,
  withoutDemoDiary,
} from '@larkhold/engine';
import { createBackup, createKit, formatBackup, type Kit, type Persistence, type Store } from '@larkhold/store';
import type { App, AppActions, AppView } from './app-context.ts';
import { type DrillLock, onlyTab } from './drill-lock.ts';
import { createFolderBackup, type FolderBackupParts } from './folder-backup.ts';

/** What the app stands on; `wiring.ts` brings the real ones, a test its own. */
export interface Surroundings {
  store: Store;
  /** The archer's local day, ISO 8601. */
  today(): string;
  /** The instant, ISO 8601 UTC. */
  instant(): string;
  newId(): string;
  saveFile(name: string, text: string): void;
  trySound(kind: CueKind, kit: Kit): void;
  askForPersistence(): Promise<Persistence>;
  /** Lets the archer choose a folder; left out where the browser cannot. */
  pickFolder?: FolderBackupParts['pickFolder'];
  /** All that lies on the disk, table by table; left out where there is none. */
  dumpStored?(): Promise<Record<string, Record<string, unknown>>>;
  /** One drill at a time over all tabs; where left out there is only this one. */
  drillLock?: DrillLock;
}

/** The app's state over its store. */
export interface AppState {
  /** Undefined until the first reading is done. */
  readonly app: App | undefined;
  /** Reads everything anew; also for a new day. */
  reload(): Promise<void>;
  /** Hears every new view. @returns stops it. */
  subscribe(fn: (app: App) => void): () => void;
}

/**
 * Keeps a view of the store up to date and writes to it.
 * @param around what the app stands on
 * @returns the state; call `reload` once
 */
export function createAppState(around: Surroundings): AppState {
  const { store, drillLock = onlyTab } = around;
  const listeners = new Set<(app: App) => void>();
  let app: App | undefined;
  let isDrilling = false;
  let persistence: Persistence = 'unknown';
  let last: { stored?: Journal; visible: Journal } = { visible: createJournal() };
  let kit: Kit = createKit();

  async function reload(): Promise<void> {
    const [opened, stored, readKit, running] = await Promise.all([
      store.programs(),
      store.journal(),
      store.kit(),
      store.running(),
    ]);
    kit = readKit;
    if (last.stored !== stored) last = { stored, visible: visibleJournal(stored) };
    publish({ opened, running });
  }

  function publish({ opened, running }: { opened: readonly Program[]; running: AppView['running'] }): void {
    const openedIds = new Set(opened.flatMap(({ id }) => (id === undefined ? [] : [id])));
    const programs = [...builtInPrograms.filter(({ id }) => id === undefined || !openedIds.has(id)), ...opened];
    const chosen = chosenProgram(programs, kit.programId, last.visible.drills);
    if (!chosen) throw new RangeError('builtInPrograms is empty; expected at least one program');
    const view: AppView = {
      ...{ today: around.today(), programs, openedIds, chosen, journal: last.visible, kit, running },
      ...{ where: store.where, trouble: store.trouble, persistence, isDrilling },
      runsElsewhere: drillLock.isElsewhere,
    };
    show({ view, act });
  }

  function show(next: App): void {
    app = next;
    for (const fn of [...listeners]) fn(next);
  }

  /** A refused write stays in memory and shows as the store's trouble; the archer's work goes on. */
  async function write(work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch {
      // told below by `store.trouble`
    }
    await reload();
  }

  const folderBackup = around.pickFolder && createFolderBackup({ ...around, pickFolder: around.pickFolder });
  const act: AppActions = {
    chooseProgram: (id) => act.changeKit({ programId: id }),
    putProgram: (program) => write(() => store.putProgram(program)),
    removeProgram: (id) => write(() => store.removeProgram(id)),
    changeKit: (changes) => {
      kit = { ...kit, ...changes };
      const changed = kit;
      return write(() => store.putKit(changed));
    },
    putDrill: (record) => write(() => store.putDrill(record)),
    removeDrills: (ids) => write(() => store.removeDrills(ids)),
    putDay: (entry) => write(() => store.putDay(entry)),
    putWeek: (page) => write(() => store.putWeek(page)),
    putNote: (note) => write(() => store.putNote(note)),
    putMilestone: (milestone) => write(() => store.putMilestone(milestone)),
    putMajorGoal: (goal) => write(() => store.putMajorGoal(goal)),
    storedJournal: () => store.journal(),
    mergeInto: (journal) => write(() => store.mergeInto(journal)),
    replaceJournal: (journal) => write(() => store.replaceJournal(journal)),
    writeRep: (record, running) => write(() => store.writeRep(record, running)),
    putRunning: (running) => write(() => store.putRunning(running)),
    takeDrill: () => drillLock.take(),
    freeDrill: () => drillLock.free(),
    setDrilling(next) {
      isDrilling = next;
      if (app) show({ ...app, view: { ...app.view, isDrilling } });
    },
    loadDemo: () => write(() => store.mergeInto(demoDiary(around.today()))),
    removeDemo: () => write(async () => store.replaceJournal(withoutDemoDiary(await store.journal()))),
    keepStored: async () => {
      persistence = await around.askForPersistence();
      await reload();
    },
    saveFile: around.saveFile,
    saveBackup: async () => {
      const backup = await createBackup(store, around.instant());
      around.saveFile(`larkhold-${around.today()}.backup.json`, formatBackup(backup));
      await act.changeKit({ backup: { ...kit.backup, lastAt: backup.madeAt } });
    },
    folderBackup,
    async saveToFolder(asks) {
      const end = (await folderBackup?.save(asks)) ?? 'no folder';
      if (end === 'saved') await act.changeKit({ backup: { ...kit.backup, lastAt: around.instant() } });
      return end;
    },
    checkStored: async () => {
      const report = await store.integrityReport();
      await reload();
      return report;
    },
    saveDump: async () => {
      try {
        const dump = await around.dumpStored?.();
        if (!dump || Object.keys(dump).length === 0) return 'There is nothing on the disk.';
        around.saveFile(`larkhold-${around.today()}.dump.json`, `${JSON.stringify(dump, null, 2)}\n`);
        return undefined;
      } catch {
        return 'The browser does not let the disk be read.';
      }
    },
    trySound: (kind) => around.trySound(kind, kit),
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
    subscribe(fn) {
      listeners.add(fn);
      if (app) fn(app);
      return () => listeners.delete(fn);
    },
  };
}
