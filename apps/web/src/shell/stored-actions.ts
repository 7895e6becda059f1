import { demoDiary, withoutDemoDiary } from '@larkhold/engine';
import { createBackup, DrillKeeper, formatBackup } from '@larkhold/store';
import type { AppActions, AppView, Refusal } from './app-context.ts';
import { createFolderBackup } from './folder-backup.ts';
import { putBack, type RemovedThing, withoutRemoved, withRemoved } from './removed-thing.ts';
import { saveDump } from './save-dump.ts';
import type { Surroundings } from './surroundings.ts';

/** Actions that the app's state adds: they change what is shown, or are its surroundings' own. */
type OwnActions =
  | 'takeDrill'
  | 'freeDrill'
  | 'setDrilling'
  | 'keepStored'
  | 'checkStored'
  | 'acceptLoss'
  | 'leaveOut'
  | 'removeOdd'
  | 'dismissRefusal'
  | 'trySound'
  | 'box'
  | 'post'
  | 'squad'
  | 'newId'
  | 'instant';

/** Does something that writes. @returns what it gave, or `undefined` where it was refused */
export type Attempt = <T>(thing: Refusal['thing'], work: () => Promise<T>) => Promise<{ given?: T } | undefined>;

/**
 * What the places can do with what is stored.
 * @param around what the app needs from outside
 * @param view what is shown now
 * @param attempt does each write, and reads again after it
 * @returns the actions
 */
export function createStoredActions(
  around: Surroundings,
  view: () => AppView | undefined,
  attempt: Attempt,
): Omit<AppActions, OwnActions> {
  const { store } = around;

  async function write(thing: Refusal['thing'], work: () => Promise<void>): Promise<boolean> {
    return (await attempt(thing, work)) !== undefined;
  }

  /** Removes something and keeps it for an undo until the next day. */
  async function remove(
    thing: Refusal['thing'],
    things: readonly RemovedThing[],
    work: () => Promise<void>,
  ): Promise<boolean> {
    return write(thing, async () => {
      await work();
      await store.putRemovedToday(withRemoved(view()?.removedToday ?? [], things, around.today()));
    });
  }

  async function bringBack(thing: RemovedThing): Promise<boolean> {
    const isBack = await putBack(thing, act, around.instant());
    return (
      isBack &&
      write('fault', () => store.putRemovedToday(withoutRemoved(view()?.removedToday ?? [], thing, around.today())))
    );
  }

  const folderBackup = around.pickFolder && createFolderBackup({ ...around, pickFolder: around.pickFolder });
  const drillKeeper = new DrillKeeper(
    {
      putRunning: (running) => write('running', () => store.putRunning(running)),
      writeRep: (record, running) => write('running', () => store.writeRep(record, running)),
      endDrill: (record) => write('running', () => store.endDrill(record)),
      putDrill: (record) => write('drills', () => store.putDrill(record)),
    },
    around.instant,
  );
  const act: Omit<AppActions, OwnActions> = {
    chooseProgram: (id) => act.changeKit({ programId: id, programDay: around.today() }),
    putProgram: (program) => write('opened', () => store.putProgram(program)),
    removeProgram: (id) => {
      const value = view()?.programs.find((program) => program.id === id);
      return remove('opened', value ? [{ kind: 'program', value }] : [], () => store.removeProgram(id));
    },
    bringBack,
    changeKit: (changes) =>
      write('kit', () => store.changeKit(typeof changes === 'function' ? changes : () => changes)),
    putDrill: (record) => write('drills', () => store.putDrill(record)),
    removeDrills: (ids) => {
      const records = view()?.journal.drills.filter(({ id }) => ids.includes(id)) ?? [];
      const things = records.map((value) => ({ kind: 'drill' as const, value }));
      return remove('drills', things, () => store.removeDrills(ids));
    },
    putDay: (entry) => write('days', () => store.putDay(entry)),
    putWeek: (page) => write('weeks', () => store.putWeek(page)),
    putNote: (note) => {
      const value = note.removed ? view()?.journal.notes?.find(({ id }) => id === note.id) : undefined;
      return value
        ? remove('notes', [{ kind: 'note', value }], () => store.putNote(note))
        : write('notes', () => store.putNote(note));
    },
    putMilestone: (milestone) => {
      const value = milestone.removed ? view()?.journal.milestones?.find(({ id }) => id === milestone.id) : undefined;
      return value
        ? remove('milestones', [{ kind: 'milestone', value }], () => store.putMilestone(milestone))
        : write('milestones', () => store.putMilestone(milestone));
    },
    keepHandOver: ({ id, text }) => write('fault', async () => around.squad?.keep(id, text)),
    removeHandOver: (value) =>
      remove('fault', [{ kind: 'handOver', value }], async () => around.squad?.remove(value.id)),
    putSeason: (season) => write('season', () => store.putSeason(season)),
    putMajorGoal: (goal) => write('majorGoal', () => store.putMajorGoal(goal)),
    storedJournal: () => store.journal(),
    takeIn: async (incoming) => (await attempt('fault', () => store.takeIn(incoming)))?.given,
    takeBack: async (taken) => (await attempt('fault', () => store.takeBack(taken)))?.given,
    async takeProgram(program, isToday = false) {
      const { id } = program;
      const before = (await store.programs()).find((one) => one.id === id);
      const taken = await act.takeIn({
        programs: [program],
        ...(isToday ? { kit: { programId: id, programDay: around.today() } } : {}),
      });
      if (taken && before && id !== undefined) {
        const at = around.instant();
        await write('fault', () => store.putReplacedProgram({ title: before.title, programId: id, at, taken }));
      }
      return taken;
    },
    async undoReplaced() {
      const replaced = view()?.replaced;
      if (!replaced) return false;
      const left = await act.takeBack(replaced.taken);
      return left !== undefined && (await write('fault', () => store.putReplacedProgram(undefined)));
    },
    drillKeeper,
    loadDemo: () => write('fault', () => store.mergeInto(demoDiary(around.today()))),
    removeDemo: () => write('fault', () => store.rewriteJournal(withoutDemoDiary)),
    saveFile: around.saveFile,
    saveBackup: async () => {
      const saved = await attempt('fault', async () => {
        const backup = await createBackup(store, around.instant());
        around.saveFile(`larkhold-${around.today()}.backup.json`, formatBackup(backup));
        return backup;
      });
      const backup = saved?.given;
      if (!backup) return;
      await act.changeKit(({ backup: { ...rest } }) => ({ backup: { ...rest, lastAt: backup.madeAt } }));
    },
    folderBackup,
    async saveToFolder(asks) {
      const end = (await folderBackup?.save(asks)) ?? 'no folder';
      if (end === 'saved') await act.changeKit(({ backup }) => ({ backup: { ...backup, lastAt: around.instant() } }));
      return end;
    },
    saveDump: () => saveDump(around),
  };
  return act;
}
