export type { Archer } from './archer/archer.ts';
export type { Capacity } from './archer/capacity.ts';
export { carefulLimit } from './archer/careful-reserve.ts';
export { estimateMaxHold, type MaxHoldEstimate } from './archer/estimate-max-hold.ts';
export { type ArcherToday, type ExposureSum, knowArcher } from './archer/know-archer.ts';
export { isAtOdds, longestOf, type OwnHold, ownHold } from './archer/own-hold.ts';
export { type PainStage, painStages } from './archer/pain-state.ts';
export type { Past } from './archer/past.ts';
export { type TestResult, testResults } from './archer/test-results.ts';
export * from './demo/demo-diary.ts';
export { createDemoJournal, type DemoJournalInput, removeDemoJournal } from './demo/demo-journal.ts';
export * from './exchange/file-json-schemas.ts';
export {
  type CalendarOptions,
  type CalendarWords,
  type EventWords,
  formatCalendar,
} from './exchange/format-calendar.ts';
export { formatCsv, formatDaysCsv, formatDrillsCsv, formatRepsCsv } from './exchange/format-csv.ts';
export {
  formatPlanCalendar,
  type PlanCalendarOptions,
  type PlanCalendarWords,
} from './exchange/format-plan-calendar.ts';
export {
  answerHandOver,
  type CoachAnswer,
  coachAnswerSchema,
  commentedWeek,
  createHandOver,
  formatHandOver,
  type HandOver,
  type HandOverInput,
  handOverSchema,
  parseHandOver,
} from './exchange/hand-over.ts';
export { type HandedPlan, handedPlan, handedPlanSchema } from './exchange/handed-plan.ts';
export {
  formatJournal,
  formatLines,
  journalFileSchema,
  journalLines,
  journalVersion,
  parseJournal,
} from './exchange/journal-file.ts';
export * from './exchange/journal-tables.ts';
export { namedFormat } from './exchange/named-format.ts';
export { type FileFormat, type FileProblem, pointerTo, readFile } from './exchange/read-file.ts';
export { enduranceTime } from './fatigue/endurance-time.ts';
export type { Joint } from './fatigue/joint.ts';
export { predictSession, type RepReserve, type SessionPrediction } from './fatigue/predict-session.ts';
export {
  FATIGUE_CAUTION,
  type FatigueOptions,
  type FatiguePoint,
  type FatigueTrace,
  type LoadStretch,
  simulateFatigue,
} from './fatigue/simulate-fatigue.ts';
export { sustainedHoldSeconds } from './fatigue/sustained-hold.ts';
export {
  type Collection,
  type CollectionName,
  collectionNames,
  journalCollections,
  journalSingles,
  type Reader,
  type SingleName,
  singleNames,
} from './journal/collections.ts';
export { type Comparison, compareJournals, type JournalComparison, type Verdict } from './journal/compare-journals.ts';
export { copyDrill } from './journal/copy-drill.ts';
export { correctOutcome, settleSeen } from './journal/correct-outcome.ts';
export { correctWhy } from './journal/correct-why.ts';
export * from './journal/day-lines.ts';
export * from './journal/drill-record.ts';
export { canonicalText, compareInstants, isSame } from './journal/edit-order.ts';
export { groupsOf, joinRows, latestStamp, type MergeRow, type MergeRules, rowOf } from './journal/field-groups.ts';
export { type HeldSum, heldOf } from './journal/held-of.ts';
export * from './journal/journal.ts';
export { journalInstantSchema } from './journal/journal-instant.ts';
export { keepUnknown } from './journal/keep-unknown.ts';
export { lastBegun } from './journal/last-drill.ts';
export { createJournal, mergeJournals, visibleJournal } from './journal/merge-journals.ts';
export { migrateJournal } from './journal/migrate-journal.ts';
export { readablePrograms } from './journal/readable-programs.ts';
export { compareStamps, laterStamp, stampAfter, withoutDevice } from './journal/stamp.ts';
export {
  DISAGREEMENT_MS,
  disagreementMs,
  seenHeldMs,
  trueHeldMs,
  trueOutcome,
  wholeHeldMs,
} from './journal/true-held-ms.ts';
export { type DailyLoads, dailyLoads } from './load/daily-loads.ts';
export { drawImpulse } from './load/draw-impulse.ts';
export { holdTime } from './load/hold-time.ts';
export { drawLengthInches, ON_FINGERS_CAUTION, onFingersWeightLbf } from './load/on-fingers-weight.ts';
export { sessionLoad } from './load/session-load.ts';
export { addTotals, createTotals, type Totals, totalsByDay } from './load/totals.ts';
export { type WeekLoad, weekLoad } from './load/week-load.ts';
export { weekTotals } from './load/week-totals.ts';
export { WORKLOAD_RATIO_CAUTION, type WorkloadRatioOptions, workloadRatio } from './load/workload-ratio.ts';
export type { Caution, CautionFacts } from './prescription/cautions.ts';
export { explain } from './prescription/explain.ts';
export { foldAhead } from './prescription/fold-ahead.ts';
export { FOLD_VERSION, foldPast, pastHolds } from './prescription/fold-past.ts';
export { type LeverValues, ladderPath } from './prescription/ladder-path.ts';
export { cleanRecord, type PlannedDrill, type PlanRow } from './prescription/plan-row.ts';
export type { SeasonPlanInput } from './prescription/plan-season.ts';
export { type PlanInput, planWeeks } from './prescription/plan-weeks.ts';
export { type PrescribeInput, prescribe } from './prescription/prescribe.ts';
export * from './prescription/prescription.ts';
export * from './prescription/prescription-sentences.ts';
export type { LadderFacts, MoveFacts, Reason, Rule, RuleFacts } from './prescription/reason.ts';
export { sayNext, sayReason } from './prescription/say-reason.ts';
export { sayWhy } from './prescription/say-why.ts';
export type { Sayer } from './prescription/sayer.ts';
export * from './prescription/time-under-tension.ts';
export { READY_MS, timelineDurationMs } from './prescription/timeline-duration.ts';
export * from './program/built-in-programs.ts';
export { type Complaint, complaintOf, type Fault, type FoundValue, faultMessage } from './program/fault.ts';
export { faultSentences } from './program/fault-sentences.ts';
export * from './program/format-program.ts';
export { isSameDrill } from './program/is-same-drill.ts';
export { findJsonFault, type TextPlace } from './program/json-fault.ts';
export { type ProgramMigration, programVersion } from './program/migrate-program.ts';
export { nextPrograms } from './program/next-programs.ts';
export * from './program/parse-program.ts';
export type { Problem } from './program/problem.ts';
export * from './program/program.ts';
export * from './program/program-id.ts';
export { programJsonSchema } from './program/program-json-schema.ts';
export {
  formatQuickLine,
  type ParsedQuickLine,
  parseQuickLine,
  type QuickBlock,
  type QuickLineProblem,
} from './program/quick-line.ts';
export * from './program/rack-programs.ts';
export * from './program/read-program-file.ts';
export { type ReadyLadder, type ReadyLadderKind, readyLadders, type WrittenLadder } from './program/ready-ladders.ts';
export {
  type Due,
  dueToday,
  MOST_DAYS_IN_ROW,
  type RestReason,
  type SeasonArcher,
  TEST_FREE_DAYS,
  YOUNG_UNTIL_YEARS,
} from './season/due-today.ts';
export { emptySeason } from './season/empty-season.ts';
export { findProgram } from './season/find-program.ts';
export { formatSeason } from './season/format-season.ts';
export { knowForSeason } from './season/know-for-season.ts';
export { type ParsedSeason, parseSeason } from './season/parse-season.ts';
export {
  type Amount,
  type ComparedDay,
  type PlannedAgainstDone,
  type PlannedAgainstDoneInput,
  plannedAgainstDone,
} from './season/planned-against-done.ts';
export * from './season/season.ts';
export { type Lighter, lighterOn, type Planner, type WrittenDay, writtenDay } from './season/season-day.ts';
export { seasonJsonSchema } from './season/season-json-schema.ts';
export { type SeasonNotice, seasonNotices } from './season/season-notices.ts';
export { type SeasonToday, type SeasonTodayInput, seasonToday } from './season/season-today.ts';
export { type SensibleSeasonInput, sensibleSeason } from './season/sensible-season.ts';
export { takeDatedSessions } from './season/take-dated-sessions.ts';
export { createSession, GAP_LIMIT_MS, type Session, type SessionInput } from './session/create-session.ts';
export { type Ledger, type SessionSnapshot, sessionSnapshotSchema } from './session/session-snapshot.ts';
export * from './session/session-view.ts';
export { MORE_REST_MS, type Walk } from './session/walk.ts';
export * from './summary/chosen-program.ts';
export * from './summary/climb-weeks.ts';
export { type DrillOutlook, type DrillOutlookInput, drillOutlook } from './summary/drill-outlook.ts';
export * from './summary/drills-by-day.ts';
export { heldBefore } from './summary/held-before.ts';
export * from './summary/load-sums.ts';
export * from './summary/milestones-shown.ts';
export * from './summary/month-days.ts';
export * from './summary/months-of.ts';
export * from './summary/notes-shown.ts';
export { pastEnd, pastPrograms } from './summary/plan-past.ts';
export * from './summary/program-outline.ts';
export * from './summary/shooting-places.ts';
export * from './summary/squad-summary.ts';
export * from './summary/todays-program.ts';
export * from './summary/trend-series.ts';
export * from './summary/trend-verdict.ts';
export * from './summary/week-summary.ts';
export * from './summary/weeks-ahead.ts';
export * from './timeline/check-call.ts';
export * from './timeline/drill-calls.ts';
export { type LayOutOptions, layOut, REST_OVER_MS } from './timeline/lay-out.ts';
export * from './timeline/spoken-amount.ts';
export * from './timeline/timeline.ts';
export { dayNumber, dayOfNumber, isoWeek, mondayNumber } from './units/calendar-day.ts';
export * from './units/iso-weeks.ts';
export type { DayStyle, Given, MessageParameters, NumberStyle, ParametersOf } from './units/message-parameters.ts';
export { poundsForceToNewtons } from './units/pounds-force.ts';
