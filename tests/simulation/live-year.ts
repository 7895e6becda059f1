import {
  createJournal,
  type DayEntry,
  type DrillRecord,
  dailyLoads,
  dayNumber,
  dayOfNumber,
  isoWeek,
  type Journal,
  type Prescription,
  prescribe,
  weekLoad,
  workloadRatio,
} from '@larkhold/engine';
import { createChance } from './chance.ts';
import type { InventedArcher } from './invented-archers.ts';
import { liveDrill } from './live-drill.ts';

/** The year's first day: a Monday, so that weeks are whole. */
export const FIRST_DAY = '2025-12-29';
const WEEK_COUNT = 52;

// How an invented archer gets stronger, weaker and sore. Own assumptions, chosen to look like a year: no source.
const GAIN_SHARE = 0.008;
const FULL_GAIN_HOLDS = 3;
const LOSS_AFTER_DAYS = 14;
const LOSS_SHARE = 0.006;
const SORE_SHARE = 0.001;
const SORE_FROM_FAILING = 0.03;

/** One day on which a drill was done. */
export interface LivedDay {
  day: number;
  date: string;
  prescription: Prescription;
  record: DrillRecord;
  /** The archer's real longest hold that day, seconds. */
  maxHoldSeconds: number;
}

/** One ISO week of the year. */
export interface LivedWeek {
  week: string;
  drillsCount: number;
  prescribedMs: number;
  heldMs: number;
  shortCount: number;
  load: number;
  monotony?: number;
  /** Rolling, at the week's end. */
  ratio?: number;
  /** Longest hold that was prescribed, milliseconds. */
  askedMs: number;
  /** Rules that acted. */
  rules: readonly string[];
}

/** The result of a year. */
export interface LivedYear {
  archer: InventedArcher;
  days: readonly LivedDay[];
  weeks: readonly LivedWeek[];
  journal: Journal;
  /** The archer's real longest hold at the end, seconds. */
  endHoldSeconds: number;
}

/**
 * Lives a year: each day asks for today's numbers, does them, and keeps what was done.
 * @param archer an invented one
 * @param plan `fixed`: the program as its file says, every time, whatever happened; cut only to the minutes there are
 * @returns days, weeks and the journal; the same each time
 */
export function liveYear(archer: InventedArcher, plan: 'own' | 'fixed' = 'own'): LivedYear {
  const chance = createChance(archer.seed);
  const first = dayNumber(FIRST_DAY);
  const drills: DrillRecord[] = [];
  const entries: DayEntry[] = [];
  const days: LivedDay[] = [];
  let maxHoldSeconds = archer.maxHoldSeconds;
  let idleDays = 0;
  for (let day = 0; day < WEEK_COUNT * 7; day++) {
    const date = dayOfNumber(first + day);
    const entry = entryOf(archer, day, date, chance);
    if (entry) entries.push(entry);
    const minutes = archer.short !== undefined && chance() < archer.short.share ? archer.short.minutes : undefined;
    const wantsDrill = chance() < archer.drillShare(day);
    const isFixed = plan === 'fixed';
    const known = isFixed ? [] : drills;
    const competitionDay = archer.competitionDays?.find((one) => one >= date);
    const prescription = prescribe({
      ...{ program: archer.program, records: known, days: isFixed ? [] : entries, today: date, minutes },
      ...(isFixed ? {} : { archer: archer.archer, competitionDay }),
    });
    const isResting = prescription.rest !== undefined && archer.isHeedful;
    if (!wantsDrill || isResting || prescription.blocks.length === 0) {
      idleDays += 1;
      if (idleDays > LOSS_AFTER_DAYS) maxHoldSeconds *= 1 - LOSS_SHARE;
      continue;
    }
    idleDays = 0;
    const living = { maxHoldSeconds, chance, mishapShare: archer.mishapShare };
    const record = liveDrill(archer.program, prescription, living, `${archer.name}-${day}`);
    const shortShare = record.reps.filter(({ outcome }) => outcome === 'short').length / record.reps.length;
    const isSore = archer.painDays.includes(day) || chance() < SORE_SHARE + SORE_FROM_FAILING * shortShare;
    record.pain = isSore;
    drills.push(record);
    days.push({ day, date, prescription, record, maxHoldSeconds });
    const heldSeconds = record.reps.reduce((sum, { heldMs }) => sum + heldMs, 0) / 1000;
    const stimulus = Math.min(1, heldSeconds / (FULL_GAIN_HOLDS * maxHoldSeconds)) * (1 - shortShare);
    maxHoldSeconds += (archer.ceilingSeconds - maxHoldSeconds) * GAIN_SHARE * stimulus;
  }
  const journal = { ...createJournal(), drills, days: entries };
  return { archer, days, journal, weeks: weeksOf(days, journal), endHoldSeconds: maxHoldSeconds };
}

function entryOf(archer: InventedArcher, day: number, date: string, chance: () => number): DayEntry | undefined {
  const entry: DayEntry = { date };
  if (chance() < archer.arrows.share) {
    const count = Math.round(archer.arrows.count * (0.7 + 0.6 * chance()));
    entry.arrows = [{ kind: 'practice', count }];
    entry.shootingMinutes = Math.round(count * 0.8);
    entry.shootingEffort = 4;
  }
  if (chance() < archer.heavyShare) entry.readiness = 'heavy';
  if (archer.isHeedful) entry.pain = archer.painDays.includes(day);
  return Object.keys(entry).length > 1 ? entry : undefined;
}

function weeksOf(days: readonly LivedDay[], journal: Journal): LivedWeek[] {
  const first = dayNumber(FIRST_DAY);
  const { loads } = dailyLoads(journal, dayOfNumber(first + WEEK_COUNT * 7 - 1), WEEK_COUNT * 7);
  return Array.from({ length: WEEK_COUNT }, (_, index) => {
    const from = index * 7;
    const ofWeek = days.filter(({ day }) => day >= from && day < from + 7);
    const reps = ofWeek.flatMap(({ record }) => record.reps);
    const blocks = ofWeek.flatMap(({ prescription }) => prescription.blocks);
    const { total, monotony } = weekLoad(loads.slice(from, from + 7));
    return {
      ...{ week: isoWeek(dayOfNumber(first + from)), drillsCount: ofWeek.length, load: total, monotony },
      prescribedMs: blocks.reduce((sum, { sets, reps: count, holdMs }) => sum + sets * count * holdMs, 0),
      heldMs: reps.reduce((sum, { heldMs }) => sum + heldMs, 0),
      shortCount: reps.filter(({ outcome }) => outcome === 'short').length,
      ratio: workloadRatio(loads.slice(0, from + 7)),
      askedMs: Math.max(0, ...blocks.map(({ holdMs }) => holdMs)),
      rules: [...new Set(ofWeek.flatMap(({ prescription }) => prescription.reasons.map(({ rule }) => rule)))],
    };
  });
}
