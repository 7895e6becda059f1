import {
  builtInPrograms,
  createSession,
  type DrillRecord,
  dayNumber,
  dayOfNumber,
  layOut,
  type Program,
  prescribe,
} from '@larkhold/engine';
import { bench, describe } from 'vitest';
import { bestMs } from './quiet-ms.ts';

/**
 * Archer-days a second through prescribe, layOut, session and record: the whole loop of a morning, every record fed back into the next day.
 * Run with `npm run bench:engine`; it prints each rate and its ratio to the bar.
 */

const BAR_PER_SECOND = 10_000;
const FIRST_DAY = dayNumber('2026-01-05');
const WEEKS = 26;

interface Life {
  program: Program;
  /** Drills a week; a day without one is a day too. */
  drillsPerWeek: 3 | 7;
  /** `whole` walks a session in one call, `steps` from deadline to deadline as a screen does. */
  walk: 'whole' | 'steps';
}

function drill({ program, walk }: Life, records: readonly DrillRecord[], today: string): DrillRecord {
  const timeline = layOut(prescribe({ program, records, today }));
  const session = createSession({
    ...{ timeline, program: program.title, programId: program.id, startedAt: `${today}T06:30:00+01:00` },
    newId: () => today,
    gapLimitMs: Number.POSITIVE_INFINITY, // nothing is lost in an invented life
  });
  session.send({ type: 'begin' }, 0);
  if (walk === 'whole') session.advance(timeline.durationMs);
  for (let dueMs = session.nextDeadlineMs(); dueMs !== undefined; dueMs = session.nextDeadlineMs()) {
    session.advance(dueMs);
  }
  return session.record();
}

/** Half a year of one archer. */
function live(life: Life): void {
  const records: DrillRecord[] = [];
  for (let day = 0; day < WEEKS * 7; day++) {
    if (life.drillsPerWeek === 3 && ![0, 2, 4].includes(day % 7)) continue;
    records.push(drill(life, records, dayOfNumber(FIRST_DAY + day)));
  }
  const isWhole = records.every(({ reps, open }) => !open && reps.every(({ outcome }) => outcome === 'held'));
  if (!isWhole || records.length !== WEEKS * life.drillsPerWeek) throw new Error('a drill was not walked to its end');
}

/** Days a second in the best of many runs of half a year, once warm. */
function daysPerSecond(life: Life): number {
  const warmUntilMs = performance.now() + 2000;
  while (performance.now() < warmUntilMs) live(life);
  return (WEEKS * 7 * 1000) / bestMs(() => live(life), 40);
}

describe('half a year of archers', () => {
  for (const program of builtInPrograms.slice(0, 2)) {
    for (const drillsPerWeek of [3, 7] as const) {
      for (const walk of ['whole', 'steps'] as const) {
        const days = daysPerSecond({ program, drillsPerWeek, walk });
        const ratio = (days / BAR_PER_SECOND).toFixed(2);
        const name = `${program.title}, ${drillsPerWeek} drills a week, walked by ${walk}`;
        console.log(`${name}: ${Math.round(days).toLocaleString('en')} archer-days a second, ${ratio} times the bar`);
      }
    }
  }
  bench('club starter, three drills a week', () =>
    live({ program: builtInPrograms[0]!, drillsPerWeek: 3, walk: 'whole' }),
  );
});
