export * from './journal/drill-record.ts';
export * from './journal/journal.ts';
export { createJournal, mergeJournals, visibleJournal } from './journal/merge-journals.ts';
export * from './prescription/prescription.ts';
export * from './program/program.ts';
export * from './session/session-view.ts';
export * from './timeline/timeline.ts';
