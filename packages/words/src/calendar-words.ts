import type { CalendarWords, PlanCalendarWords, PlanRow } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import type { Units } from './formats.ts';
import { presentWords } from './present-words.ts';
import { reasonWords } from './reason-words.ts';

/**
 * What a calendar file says of what was done.
 * @param words the language
 * @returns what `formatCalendar` asks for
 */
export function calendarWords(words: Words = presentWords()): CalendarWords {
  return {
    drill({ program, heldCount: held, repCount: reps, heldMs, seenMs, effort }) {
      const ms = wholeSeconds(heldMs);
      const about =
        effort === undefined
          ? words.say('calendar.drillAbout', { ms })
          : words.say('calendar.drillEffort', { ms, effort });
      const seen = seenMs > 0 ? [words.say('calendar.drillSeen', { ms: wholeSeconds(seenMs) })] : [];
      return {
        summary: words.say('calendar.drill', { program, held, reps }),
        description: [about, ...seen].join(' '),
      };
    },
    day: ({ arrows, work }) =>
      [
        ...arrows.map(({ count, kind }) =>
          words.say('calendar.arrows', {
            n: count,
            kind: kind === 'blank bale' ? 'blankBale' : kind === 'practice' ? kind : 'other',
          }),
        ),
        ...work.map(({ minutes, kind }) =>
          words.say('calendar.work', { ms: minutes * 60_000, kind: kind === 'fitness' ? 'other' : kind }),
        ),
      ].join('; '),
  };
}

/**
 * What a calendar file says of what is planned.
 * @param units the archer's
 * @param words the language
 * @returns what `formatPlanCalendar` asks for
 */
export function planCalendarWords(units: Units, words: Words = presentWords()): PlanCalendarWords {
  return (row, program) => {
    const drills = plannedWords(row, units, words);
    if (row.kind === 'competition') return { summary: drills, description: words.say('calendar.competitionAbout') };
    const { kind, heldMs: held, durationMs: all } = row;
    const about = {
      drills,
      held: Math.round(held / 1000) * 1000,
      all,
      kind: kind === 'usual' ? 'other' : kind,
    } as const;
    return {
      summary: words.say('calendar.planned', { program, drills }),
      description: words.say('calendar.plannedAbout', about),
    };
  };
}

/**
 * A planned day in one line.
 * @param row of a plan
 * @param units the archer's
 * @param words the language
 * @returns 'Holds 2 × 5, hold 30 s'; a competition's name
 */
export function plannedWords(
  { kind, competition, drills }: PlanRow,
  units: Units,
  words: Words = presentWords(),
): string {
  if (kind === 'competition') return competition ?? words.say('calendar.competition');
  return drills
    .map(({ title, sets, reps, holdMs: hold, addedWeightLbf }) =>
      addedWeightLbf > 0
        ? words.say('calendar.dayDrillAdded', { title, sets, reps, hold, weight: words.weight(addedWeightLbf, units) })
        : words.say('calendar.dayDrill', { title, sets, reps, hold }),
    )
    .join('; ');
}

/**
 * Where the numbers of a planned day come from.
 * @param row of a plan
 * @param words the language
 * @returns plain sentences
 */
export function plannedReasons({ kind, reasons }: PlanRow, words: Words = presentWords()): string[] {
  if (kind === 'competition') return [words.say('calendar.competitionAbout')];
  return reasons.map((reason) => reasonWords(reason, words));
}

function wholeSeconds(ms: number): number {
  return Math.round(ms / 1000) * 1000;
}
