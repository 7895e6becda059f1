import type {
  CueKind,
  DayEntry,
  DrillRecord,
  Journal,
  Milestone,
  NoteScrap,
  Program,
  WeekPage,
} from '@larkhold/engine';
import type { IntegrityReport, Kit, Persistence, RunningDrill, StoreTrouble } from '@larkhold/store';
import { createContext } from '@lit/context';
import type { FolderBackup, FolderBackupEnd } from './folder-backup.ts';

/** What the places show, as it stands now. Never changed in place: every change gives a new one. */
export interface AppView {
  /** The archer's local day, ISO 8601. */
  today: string;
  /** Built-in programs first, then the opened ones. */
  programs: readonly Program[];
  /** Ids of the programs that the archer opened. */
  openedIds: ReadonlySet<string>;
  /** The program of today. */
  chosen: Program;
  /** What was done; marks of removed things left out. */
  journal: Journal;
  kit: Kit;
  /** A drill that was interrupted. */
  running?: RunningDrill;
  where: 'disk' | 'memory';
  trouble?: StoreTrouble;
  persistence: Persistence;
  /** Set while a drill fills the screen. */
  isDrilling: boolean;
  /** A drill runs in another tab of this browser: `running` is its, and not to be touched here. */
  runsElsewhere: boolean;
}

/** What the places can do. A write that did not reach the disk is kept in memory and shows as `trouble`; none of these reject. */
export interface AppActions {
  chooseProgram(id: string): Promise<void>;
  putProgram(program: Program): Promise<void>;
  removeProgram(id: string): Promise<void>;
  changeKit(changes: Partial<Kit>): Promise<void>;
  putDrill(record: DrillRecord): Promise<void>;
  removeDrills(ids: readonly string[]): Promise<void>;
  putDay(entry: DayEntry): Promise<void>;
  putWeek(page: WeekPage): Promise<void>;
  /** Puts up or changes a scrap of the notes wall. */
  putNote(note: NoteScrap): Promise<void>;
  /** Writes down or changes a milestone. */
  putMilestone(milestone: Milestone): Promise<void>;
  putMajorGoal(goal: NonNullable<Journal['majorGoal']>): Promise<void>;
  /** The journal with the marks of removed things, as files and undo need it. */
  storedJournal(): Promise<Journal>;
  /** Merges another journal into ours as `mergeJournals` says. */
  mergeInto(journal: Journal): Promise<void>;
  /** Puts a journal in the place of ours: the undo of a merge. */
  replaceJournal(journal: Journal): Promise<void>;
  writeRep(record: DrillRecord, running: RunningDrill): Promise<void>;
  putRunning(running: RunningDrill | undefined): Promise<void>;
  /** Takes the one drill that may run for this tab. @returns false while another tab has it */
  takeDrill(): Promise<boolean>;
  /** Lets another tab drill. */
  freeDrill(): void;
  /** Says that a drill fills the screen, so that nothing gets in its way. */
  setDrilling(isDrilling: boolean): void;
  loadDemo(): Promise<void>;
  removeDemo(): Promise<void>;
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
