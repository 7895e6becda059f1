import type { Program } from '@larkhold/engine';
import { type InventedArcher, inventedArchers } from './invented-archers.ts';
import { type LivedYear, liveYear } from './live-year.ts';
import { failedCount } from './year-beside-fixed.ts';

/** A year with one caution taken away, beside the fixed plan of the same archer. */
export interface YearWithout {
  what: string;
  own: LivedYear;
  fixed: LivedYear;
}

/**
 * The three archers who end lower than with the fixed plan, each with what holds them back taken away.
 * @returns their years
 */
export function yearsWithout(): YearWithout[] {
  const [keen, irregular, daily] = ['Keen', 'Irregular', 'Daily'].map(
    (name) => inventedArchers.find((archer) => archer.name === name)!,
  ) as [InventedArcher, InventedArcher, InventedArcher];
  const variants: readonly [what: string, archer: InventedArcher][] = [
    ['*Keen*, who rests when told to', { ...keen, isHeedful: true }],
    ["*Keen*, whose file does not limit a week's growth", { ...keen, program: withoutGrowthLimit(keen.program) }],
    ['*Irregular*, a year older: sixteen', { ...irregular, archer: { ...irregular.archer, ageYears: 16 } }],
    ['*Daily*, who rests when told to', { ...daily, isHeedful: true }],
  ];
  return variants.map(([what, archer]) => ({ what, own: liveYear(archer), fixed: liveYear(archer, 'fixed') }));
}

/** The same as a table in Markdown. */
export function singleCautions(): string {
  const rows = yearsWithout().map(({ what, own, fixed }) => {
    const both = (of: (one: LivedYear) => number | string) => `${of(own)} / ${of(fixed)}`;
    const cells = [what, both(({ days }) => days.length), both(failedCount), both(minutesOf)];
    return `| ${[...cells, both(({ endHoldSeconds }) => endHoldSeconds.toFixed(0))].join(' | ')} |`;
  });
  return [
    '### Single cautions',
    '',
    'Three archers end with a shorter longest hold than with the fixed plan. Each of them here without one thing that holds them back; these rules / the plan.',
    '',
    '| archer | drills | failed drills | at full draw, min | longest hold at the end, s |',
    '| --- | --- | --- | --- | --- |',
    ...rows,
  ].join('\n');
}

function minutesOf({ weeks }: LivedYear): number {
  return Math.round(weeks.reduce((sum, { heldMs }) => sum + heldMs, 0) / 60_000);
}

function withoutGrowthLimit(program: Program): Program {
  return {
    ...program,
    blocks: program.blocks.map(({ ladder, ...block }) => ({
      ...block,
      ...(ladder ? { ladder: { ...ladder, weeklyGrowth: undefined } } : {}),
    })),
  };
}
