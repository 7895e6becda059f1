import {
  createHandOver,
  type DrillRecord,
  dayNumber,
  dayOfNumber,
  formatHandOver,
  isoWeek,
  type Journal,
} from '@larkhold/engine';

/** What an invented journal is made of. */
export interface YearsInput {
  /** The last day, ISO 8601. */
  lastDay: string;
  dayCount: number;
  /** Every third drill and day is of this device alone; the others are the same on all devices. */
  device: string;
}

const REP_COUNT = 30;

/**
 * An invented journal: a drill of 30 reps and a day entry every day, a page every week. The same arguments give the same journal.
 * @param input see `YearsInput`
 * @returns the journal
 */
export function createYears({ lastDay, dayCount, device }: YearsInput): Journal {
  const journal: Journal = { drills: [], days: [], weeks: [] };
  const last = dayNumber(lastDay);
  for (let number = last - dayCount + 1; number <= last; number += 1) {
    const date = dayOfNumber(number);
    const editedAt = `${date}T06:41:00Z`;
    const isOfOne = number % 3 === 0;
    journal.drills.push(
      createDrill(isOfOne ? `${device}-${number}` : `both-${number}`, date, editedAt, 4 + (number % 4)),
    );
    journal.days.push({
      date,
      arrows: [{ kind: 'practice', count: 60 + (number % 90) }],
      work: [{ kind: 'mobility', minutes: 10, effort: 2 }],
      feel: 1 + (number % 5),
      ...(isOfOne ? { feelWords: `As ${device} says` } : {}),
      ...(number % 40 === 0 ? { pain: true } : {}),
      note: 'Slow draw, low front shoulder.',
      editedAt,
    });
    if (number % 7 === 0) {
      journal.weeks.push({
        ...{ week: isoWeek(date), focus: `Focus of ${device}`, plannedDays: [1, 3, 5] },
        ...{ wentRight: 'Set-up', needsWork: 'Let-down', carriedForward: 'Count two before every draw', editedAt },
      });
    }
  }
  return journal;
}

/**
 * An archer's hand-over of two years, notes and all.
 * @param archer which one of the squad
 * @param lastDay ISO 8601
 * @returns the file's text
 */
export function createTwoYears(archer: number, lastDay: string): string {
  const [journal, name] = [createYears({ lastDay, dayCount: 730, device: `archer-${archer}` }), `Archer ${archer}`];
  return formatHandOver(
    createHandOver({
      ...{ journal, archerId: `archer-${archer}`, archer: name, includesNotes: true },
      ...{ from: dayOfNumber(dayNumber(lastDay) - 729), to: lastDay, madeAt: `${lastDay}T20:00:00Z` },
    }),
  );
}

function createDrill(id: string, date: string, editedAt: string, effort: number): DrillRecord {
  return {
    ...{ id, program: 'Slow mornings', date, editedAt, effort, durationMs: 1_800_000, prescribedReps: REP_COUNT },
    ...{ startedAt: `${date}T06:10:00Z`, endedAt: `${date}T06:40:00Z`, onFingersLbf: 34, tool: 'bow' },
    reps: Array.from({ length: REP_COUNT }, (_, rep) => {
      const isShort = rep % 11 === 10;
      return {
        ...{ block: 0, set: Math.floor(rep / 10), rep: rep % 10, hand: 'usual', prescribedMs: 30_000 },
        ...{ heldMs: isShort ? 21_400 : 30_000, outcome: isShort ? 'short' : 'held' },
      };
    }),
  };
}
