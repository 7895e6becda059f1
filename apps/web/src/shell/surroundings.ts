import type { CueKind } from '@larkhold/engine';
import type { Kit, Persistence, SquadShelf, Store, WitnessPlace } from '@larkhold/store';
import type { BoxKeeper } from './box-keeper.ts';
import type { CoachPost } from './coach-post.ts';
import type { DrillLock } from './drill-lock.ts';
import type { FolderBackupParts } from './folder-backup.ts';

/** What the app needs from outside; `wiring.ts` brings the real ones, a test its own. */
export interface Surroundings {
  store: Store;
  /** The archer's local day, ISO 8601. */
  today(): string;
  /** The instant, ISO 8601 UTC. */
  instant(): string;
  /** Keeps this device in the archer's box; left out where no box is kept. */
  box?: BoxKeeper;
  /** Hand-overs and answers by way of a coach's box; where left out there are only files. */
  post?: CoachPost;
  /** Where a coach's hand-overs are kept; where left out they are gone with the page. */
  squad?: SquadShelf;
  newId(): string;
  saveFile(name: string, text: string): void;
  trySound(kind: CueKind, kit: Kit): void;
  askForPersistence(): Promise<Persistence>;
  /** Lets the archer choose a folder; left out where the browser cannot. */
  pickFolder?: FolderBackupParts['pickFolder'];
  /** All that lies on the disk, table by table; left out where nothing is kept on a disk. */
  dumpStored?(): Promise<Record<string, Record<string, unknown>>>;
  /** Hears of a fault of Larkhold's own, for the console of whoever looks for it. */
  report?(error: unknown): void;
  /** What is known of the journal outside of its database; where left out, a lost one is not seen. */
  witness?: WitnessPlace;
  /** One drill at a time over all tabs; where left out there is only this one. */
  drillLock?: DrillLock;
}
