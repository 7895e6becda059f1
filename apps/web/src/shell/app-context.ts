import type {
  CueKind,
  DayEntry,
  DrillRecord,
  Journal,
  Milestone,
  NoteScrap,
  Past,
  Program,
  Season,
  SeasonToday,
  WeekPage,
} from '@larkhold/engine';
import type {
  DrillKeeper,
  Incoming,
  IntegrityReport,
  Kit,
  LeftValue,
  LostJournal,
  Persistence,
  ReplacedProgram,
  RunningDrill,
  SquadShelf,
  StoredThing,
  StoreTrouble,
  TakenIn,
} from '@larkhold/store';
import { createContext } from '@lit/context';
import type { BoxKeeper } from './box-keeper.ts';
import type { CoachPost } from './coach-post.ts';
import type { FolderBackup, FolderBackupEnd } from './folder-backup.ts';
import type { OddEntry } from './odd-entries.ts';
import type { KeptHandOver, RemovedThing } from './removed-thing.ts';

/** What the places show, as it is now. Never changed in place: every change gives a new one. */
export interface AppView {
  /** The archer's local day, ISO 8601. */
  today: string;
  /** Built-in programs first, then the opened ones. */
  programs: readonly Program[];
  /** Ids of the programs that the archer opened. */
  openedIds: ReadonlySet<string>;
  /** The program of today: the one that the archer took for it, else the next that is due, else the one the archer is on. */
  chosen: Program;
  /** What is due today, and the season that says so. */
  season: SeasonToday;
  /** What was done; marks of removed things left out. */
  journal: Journal;
  /**
   * There while only the last weeks of the journal are read: what the drills and days before these fold into. Today's numbers are whole with it;
   * whatever else needs all of the journal waits until it is gone.
   */
  past?: Past;
  kit: Kit;
  /** What was removed today, newest last: each can be brought back until the next day. */
  removedToday: readonly RemovedThing[];
  /** A drill that was interrupted. */
  running?: RunningDrill;
  where: 'disk' | 'memory';
  trouble?: StoreTrouble;
  /** Why the last request could not be done. */
  refusal?: Refusal;
  persistence: Persistence;
  /** What was kept on this device and is no longer there, until the archer says to go on. */
  lost?: LostJournal;
  /** A program that was replaced less than a day ago, while the new one is unchanged. */
  replaced?: ReplacedProgram;
  /** What can't be shown: it is in none of the lists. */
  oddEntries: readonly OddEntry[];
  /** Set while a drill fills the screen. */
  isDrilling: boolean;
  /** A drill runs in another tab of this browser: `running` is its, and not to be touched here. */
  runsElsewhere: boolean;
}

/** What could not be done, in words for the archer. */
export interface Refusal {
  /** What was refused; `fault` where Larkhold itself failed. */
  thing: StoredThing | 'fault';
  message: string;
}

/**
 * What the places can do. None of these reject. Those that write tell whether the value is kept: a write that did not reach the disk is kept
 * in memory and shows as `trouble`; a value that is refused shows as `refusal`, and the field that it came from must keep it.
 */
export interface AppActions {
  chooseProgram(id: string): Promise<boolean>;
  putProgram(program: Program): Promise<boolean>;
  removeProgram(id: string): Promise<boolean>;
  /** Changes values of the kit. Where the new value is made from the old one, pass a function: the kit may have changed since it was shown. */
  changeKit(changes: Partial<Kit> | ((kit: Kit) => Partial<Kit>)): Promise<boolean>;
  putDrill(record: DrillRecord): Promise<boolean>;
  removeDrills(ids: readonly string[]): Promise<boolean>;
  /** Puts something that was removed today back in its place. */
  bringBack(thing: RemovedThing): Promise<boolean>;
  putDay(entry: DayEntry): Promise<boolean>;
  putWeek(page: WeekPage): Promise<boolean>;
  /** Puts up or changes a scrap of the notes wall. */
  putNote(note: NoteScrap): Promise<boolean>;
  /** Writes down or changes a milestone. */
  putMilestone(milestone: Milestone): Promise<boolean>;
  /** Keeps the archer's season, whole. */
  putSeason(season: Season): Promise<boolean>;
  putMajorGoal(goal: NonNullable<Journal['majorGoal']>): Promise<boolean>;
  /** The journal with the marks of removed things, as files and undo need it. */
  storedJournal(): Promise<Journal>;
  /** Takes in a journal, programs and values of the kit, all or nothing. @returns what changed, for `takeBack`; undefined where it was refused */
  takeIn(incoming: Incoming): Promise<TakenIn | undefined>;
  /** Takes back what still is as the import left it. @returns what was left; undefined where nothing could be taken back */
  takeBack(taken: TakenIn): Promise<LeftValue[] | undefined>;
  /**
   * Takes a program into the rack. One that it takes the place of is kept for a day.
   * @param isToday it becomes today's too
   * @returns what changed, for `takeBack`; undefined where it was refused
   */
  takeProgram(program: Program, isToday?: boolean): Promise<TakenIn | undefined>;
  /** Brings back the program that was replaced last. */
  undoReplaced(): Promise<boolean>;
  /** The life of today's drill on the disk. */
  drillKeeper: DrillKeeper;
  /** Takes the one drill that may run for this tab. @returns false while another tab has it */
  takeDrill(): Promise<boolean>;
  /** Lets another tab drill. */
  freeDrill(): void;
  /** Says that a drill fills the screen, so that nothing gets in its way. */
  setDrilling(isDrilling: boolean): void;
  loadDemo(): Promise<boolean>;
  removeDemo(): Promise<boolean>;
  /** Asks the browser to keep what is stored when room runs out. */
  keepStored(): Promise<void>;
  /** Hands a file to the archer. */
  saveFile(name: string, text: string): void;
  saveBackup(): Promise<void>;
  /** Backups into a folder; absent where the browser has no such thing. */
  folderBackup?: FolderBackup;
  /** Writes a backup into the chosen folder. @param asks a press may let the browser ask for leave. */
  saveToFolder(asks: boolean): Promise<FolderBackupEnd>;
  /** Reads everything stored and says what is damaged. */
  checkStored(): Promise<IntegrityReport>;
  /** Hands over what lies on the disk as it is, good or not. @returns what went wrong, in plain words; nothing where it was saved */
  saveDump(): Promise<string | undefined>;
  /** Lets one cue be heard, as the kit says. */
  trySound(kind: CueKind): void;
  /** The archer goes on with what is there: what was lost is not told again. */
  acceptLoss(): void;
  /** Looks for the entries that could not be drawn and leaves them out. @returns false where nothing was found, so that drawing again fails again */
  leaveOut(error: unknown): boolean;
  /** Removes an entry that can't be shown. */
  removeOdd(entry: OddEntry): Promise<boolean>;
  /** The archer has read what was refused. */
  dismissRefusal(): void;
  /** Keeps this device in the archer's box; absent where nothing is wired to it. */
  box?: BoxKeeper;
  /** Hand-overs and answers by way of a coach's box; absent where nothing is wired to it. */
  post?: CoachPost;
  /** Hand-overs that a coach keeps on this device; absent where nothing is wired to it. */
  squad?: SquadShelf;
  /** Keeps a hand-over that a coach opened, in the place of any other one of the archer. */
  keepHandOver(handOver: KeptHandOver): Promise<boolean>;
  /** Takes an archer's hand-over off the coach's table. */
  removeHandOver(handOver: KeptHandOver): Promise<boolean>;
  newId(): string;
  /** The instant, ISO 8601 UTC. */
  instant(): string;
}

/** View and actions, handed to every place. */
export interface App {
  view: AppView;
  act: AppActions;
}

/** How a place gets at the app. */
export const appContext = createContext<App>('larkhold-app');
