import type { LivedYear } from './live-year.ts';

/** A drill counts as failed from this share of its reps on: the default of the program file. */
const FAILED_SHARE = 0.2;

/**
 * Years beside those of a fixed plan, as a table in Markdown.
 * @param years as lived by the prescription
 * @param fixed the same archers by the program as its file says
 * @returns lines of text
 */
export function besideFixed(years: readonly LivedYear[], fixed: readonly LivedYear[]): string {
  const rows = years.map((year, at) => {
    const other = fixed[at]!;
    const both = (of: (one: LivedYear) => number | string) => `${of(year)} / ${of(other)}`;
    const cells = [
      `**${year.archer.name}**`,
      both(({ days }) => days.length),
      both(failedCount),
      both(({ days }) => days.filter(({ record }) => record.pain).length),
      both(({ weeks }) => Math.round(weeks.reduce((sum, { heldMs }) => sum + heldMs, 0) / 60_000)),
      both(({ weeks }) => Math.max(...weeks.slice(-4).map(({ askedMs }) => askedMs)) / 1000),
      `${year.archer.maxHoldSeconds} to ${both(({ endHoldSeconds }) => endHoldSeconds.toFixed(0))}`,
    ];
    return `| ${cells.join(' | ')} |`;
  });
  return [
    '### Beside a fixed plan',
    '',
    'Each cell: these rules / the program as its file says, every time.',
    '',
    '| archer | drills | failed drills | painful drills | at full draw, min | longest hold asked at the end, s | longest hold, s |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...rows,
  ].join('\n');
}

/** Drills in which a fifth of the reps or more was let down early. */
export function failedCount({ days }: LivedYear): number {
  return days.filter(({ record: { reps } }) => {
    const short = reps.filter(({ outcome }) => outcome === 'short').length;
    return short > 0 && short / reps.length >= FAILED_SHARE;
  }).length;
}
