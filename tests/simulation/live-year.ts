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

// How an invented archer gets stronger and weaker. Own assumptions, chosen to look like a year: no source.
const GAIN_SHARE = 0.006;
const LOSS_AFTER_DAYS = 14;
const LOSS_SHARE = 0.006;

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
  /** Longest hold that was asked for, milliseconds. */
  askedMs: number;
  /** Rules that acted. */
  rules: readonly string[];
}

/** What came of a year. */
export interface LivedYear {
  archer: InventedArcher;
  days: readonly LivedDay[];
  weeks: readonly LivedWeek[];
  journal: Journal;
}

/**
 * Lives a year: each day asks for today's numbers, does them, and keeps what was done.
 * @param archer an invented one
 * @returns days, weeks and the journal; the same each time
 */
export function liveYear(archer: InventedArcher): LivedYear {
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
    const isShort = archer.short !== undefined && chance() < archer.short.share;
    if (entry?.pain || chance() >= archer.drillShare(day)) {
      idleDays += 1;
      if (idleDays > LOSS_AFTER_DAYS) maxHoldSeconds *= 1 - LOSS_SHARE;
      continue;
    }
    idleDays = 0;
    const { program, competitionDay } = archer;
    const prescription = prescribe({
      ...{ program, records: drills, days: entries, today: date, archer: archer.archer, competitionDay },
      ...(isShort && { minutes: archer.short?.minutes }),
    });
    const living = { maxHoldSeconds, chance, mishapShare: archer.mishapShare };
    const record = liveDrill(program, prescription, living, `${archer.name}-${day}`);
    drills.push(record);
    days.push({ day, date, prescription, record, maxHoldSeconds });
    maxHoldSeconds += (archer.ceilingSeconds - maxHoldSeconds) * GAIN_SHARE;
  }
  const journal = { ...createJournal(), drills, days: entries };
  return { archer, days, journal, weeks: weeksOf(days, journal) };
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
  if (archer.painDays.includes(day)) entry.pain = true;
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
