export * from './archer-of.ts';
export {
  type Backup,
  backupSchema,
  type CarriedKit,
  createBackup,
  formatBackup,
  parseBackup,
} from './backup.ts';
export * from './device-kit.ts';
export { type CutOff, cutOff, type DrillDisk, DrillKeeper, type PlannedDrill } from './drill-keeper.ts';
export * from './integrity-report.ts';
export * from './kit.ts';
export { createLocalStore, type LocalStoreParts } from './local-store.ts';
export { createMemoryAdapter } from './memory-adapter.ts';
export { nextTask } from './next-task.ts';
export * from './open-store.ts';
export { ownKitNames } from './own-kit.ts';
export { askForPersistence, type Persistence } from './persistence.ts';
export { dumpDatabase } from './raw-dump.ts';
export { RefusedValueError, type StoredThing } from './refused-value.ts';
export { type ReplacedProgram, readReplaced } from './replaced-program.ts';
export * from './running-drill.ts';
export * from './squad-shelf.ts';
export type * from './store.ts';
export type { TabChannel } from './table-keeper.ts';
export type { Incoming, LeftValue, TakenIn } from './taken-in.ts';
export * from './trouble.ts';
export {
  type LostJournal,
  lostJournal,
  storedWitness,
  type Witness,
  type WitnessPlace,
  witnessOf,
} from './witness.ts';
