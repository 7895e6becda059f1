import type { DayEntry, DrillRecord, Journal, Milestone, NoteScrap, Past, Program, WeekPage } from '@larkhold/engine';
import type { Table } from './adapter.ts';
import type { IntegrityReport, KeptAside } from './integrity-report.ts';
import type { Kit } from './kit.ts';
import type { RunningDrill } from './running-drill.ts';
import type { Incoming, LeftValue, TakenIn } from './taken-in.ts';
import type { StoreTrouble } from './trouble.ts';

/** The last weeks of a long journal. */
export interface RecentJournal {
  /** Drills and days from `past.before` on; of everything else all there is. */
  journal: Journal;
  /** What the drills and days before these fold into. */
  past: Past;
  /** The drill that was under way when the app was last left, if any. */
  running?: RunningDrill;
}

/**
 * Programs, journal and kit, kept on the device. Every write resolves when it is done and rejects with a `StoreError` when it did not
 * reach the disk; the value then stays in memory, is still read back, and goes to disk with the next write that can. A value that is not
 * what its table holds is refused with a `RefusedValueError`, and nothing changes. What is read is shared: don't change it, put a changed copy.
 */
export interface Store {
  /** `memory`: nothing outlives the page. */
  readonly where: 'disk' | 'memory';
  /** Set while memory is used instead of a disk, or while the last write has not reached it. */
  readonly trouble?: StoreTrouble;
  /** The programs that the archer opened; built-in programs are not stored. */
  programs(): Promise<Program[]>;
  /** Stores a program. It must carry an id. */
  putProgram(program: Program): Promise<void>;
  /** Leaves a mark, so that a merge does not bring it back. */
  removeProgram(id: string): Promise<void>;
  /** Everything that was done, in no promised order, marks of removed records included: see `visibleJournal`, and `mergeJournals` for order. */
  journal(): Promise<Journal>;
  /**
   * The last weeks of the journal and the past that they go on from, without reading the rest.
   * @param today ISO 8601 day
   * @returns undefined where no past is kept, where anything in it has changed since, or where everything is read already: then `journal` has it
   */
  recentJournal(today: string): Promise<RecentJournal | undefined>;
  /**
   * Keeps a folded past for the next start.
   * @param past of this journal
   * @param of the very journal that `journal` gave
   * @returns whether it is kept: not where the journal has changed since, in this tab or another, or where the past is not of all of it
   */
  keepPast(past: Past, of: Journal): Promise<boolean>;
  putDrill(record: DrillRecord): Promise<void>;
  putDrills(records: readonly DrillRecord[]): Promise<void>;
  /** Leaves a mark in place of each record, so that a merge does not bring it back. Unknown ids are left alone. */
  removeDrills(ids: readonly string[]): Promise<void>;
  putDay(entry: DayEntry): Promise<void>;
  putWeek(page: WeekPage): Promise<void>;
  /** Puts up or changes a scrap of the notes wall; a removed one leaves a mark. */
  putNote(note: NoteScrap): Promise<void>;
  /** Writes down or changes a milestone; a removed one leaves a mark. */
  putMilestone(milestone: Milestone): Promise<void>;
  putMajorGoal(goal: NonNullable<Journal['majorGoal']>): Promise<void>;
  /** Puts this journal, with its programs, season and marks, in the place of the stored one. */
  replaceJournal(journal: Journal): Promise<void>;
  /** Puts a journal in the place of the one that is stored at that moment, in one transaction. */
  rewriteJournal(change: (stored: Journal) => Journal): Promise<void>;
  /** Merges another journal into the stored one as `mergeJournals` says, in one transaction. */
  mergeInto(journal: Journal): Promise<void>;
  /**
   * Takes in a journal, programs and values of the kit, all or nothing, in one transaction.
   * @returns what changed, for `takeBack`
   */
  takeIn(incoming: Incoming): Promise<TakenIn>;
  /**
   * Takes an import back in one transaction: only what still is as the import left it.
   * @returns what was left because it has changed since
   */
  takeBack(taken: TakenIn): Promise<LeftValue[]>;
  kit(): Promise<Kit>;
  putKit(kit: Kit): Promise<void>;
  /**
   * Changes some values of the kit as it is stored at that moment, also where another change has just been asked for here or in another tab.
   * @param patch gives the values that change; `undefined` takes one away
   */
  changeKit(patch: (kit: Kit) => Partial<Kit>): Promise<void>;
  /** The folder that backups go to: a handle of this browser, as it was put. It is in no backup. */
  backupFolder(): Promise<unknown>;
  putBackupFolder(handle: unknown): Promise<void>;
  /** The program that another one took the place of last, as it was put; see `readReplaced`. It is in no backup. */
  replacedProgram(): Promise<unknown>;
  putReplacedProgram(replaced: unknown): Promise<void>;
  /** What was removed today, for an undo until the next day: of this device only, as it was put. It is in no backup and no journal. */
  removedToday(): Promise<unknown>;
  putRemovedToday(removed: unknown): Promise<void>;
  /** The way to the archer's box and what this device knows of it, as it was put. It is in no backup and no journal. */
  boxLink(): Promise<unknown>;
  putBoxLink(link: unknown): Promise<void>;
  /** The coach's box and the way to one, as they were put. They are in no backup and no journal. */
  post(): Promise<unknown>;
  putPost(post: unknown): Promise<void>;
  /** The season's own file, whole, as it was put; undefined until one is put. */
  season(): Promise<NonNullable<Journal['season']>['document'] | undefined>;
  putSeason(document: NonNullable<Journal['season']>['document']): Promise<void>;
  /**
   * The instant to stamp an edit with: the wall clock's, but never before what was edited already, here or on another device whose clock is not
   * far off. So a device whose clock is behind does not lose its edits.
   */
  instant(): string;
  /** Names this device among the archer's devices; its edits carry the name from now on. */
  nameDevice(name: string | undefined): void;
  /** The drill that was under way when the app was last left, if any. */
  running(): Promise<RunningDrill | undefined>;
  putRunning(running: RunningDrill | undefined): Promise<void>;
  /** A rep is over: the record and the running drill go to disk in one transaction, and are there when this resolves. */
  writeRep(record: DrillRecord, running: RunningDrill): Promise<void>;
  /** A drill is over: its record, where a rep had ended, goes to disk, and no drill is under way any more, in one transaction. */
  endDrill(record?: DrillRecord): Promise<void>;
  /**
   * Hears of every change, also of another tab's: which tables it was in.
   * @returns stops it.
   */
  subscribe(fn: (changed: readonly Table[]) => void): () => void;
  /** What could not be read and was set aside, as it was found, oldest first. */
  setAside(): Promise<KeptAside[]>;
  /** Throws a value away that was set aside: only the archer may ask for it. */
  removeAside(aside: KeptAside): Promise<void>;
  /** Takes an entry off its list, leaving a mark as `removeDrills` does. */
  removeListed(table: string, key: string): Promise<void>;
  /** Reads everything and says what is damaged. Nothing damaged is thrown away. */
  integrityReport(): Promise<IntegrityReport>;
  /** Lets go of the disk. Only tests and a page that is going away need it. */
  close(): void;
}
