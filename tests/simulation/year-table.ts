import type { LivedWeek, LivedYear } from './live-year.ts';

const WEEKS_A_ROW = 4;
const noteworthy = ['deload', 'layoff', 'stepDown', 'weeklyGrowth', 'taper', 'pain', 'heavy', 'arrows', 'minutes'];

/**
 * A year as a table in Markdown, four weeks a row.
 * @param year as lived
 * @returns lines of text
 */
export function yearTable({ archer, weeks }: LivedYear): string {
  const rows = Array.from({ length: weeks.length / WEEKS_A_ROW }, (_, index) =>
    rowOf(weeks.slice(index * WEEKS_A_ROW, (index + 1) * WEEKS_A_ROW)),
  );
  return [
    `### ${archer.name}`,
    '',
    `${archer.about} Program: ${archer.program.title}.`,
    '',
    '| weeks | drills | at full draw, min | longest hold asked, s | let down early | load a week | ratio at the end | rules that acted |',
    '| --- | ---: | ---: | ---: | ---: | ---: | ---: | --- |',
    ...rows,
  ].join('\n');
}

function rowOf(weeks: readonly LivedWeek[]): string {
  const sum = (of: (week: LivedWeek) => number): number => weeks.reduce((total, week) => total + of(week), 0);
  const ratio = weeks.at(-1)?.ratio;
  const acted = noteworthy.filter((rule) => weeks.some(({ rules }) => rules.includes(rule)));
  return `| ${[
    `${weeks[0]?.week.slice(5)} to ${weeks.at(-1)?.week.slice(5)}`,
    sum(({ drillsCount }) => drillsCount),
    (sum(({ heldMs }) => heldMs) / 60_000).toFixed(1),
    Math.max(...weeks.map(({ askedMs }) => askedMs)) / 1000 || '-',
    sum(({ shortCount }) => shortCount),
    Math.round(sum(({ load }) => load) / weeks.length),
    ratio === undefined ? '-' : ratio.toFixed(2),
    acted.join(', ') || '-',
  ].join(' | ')} |`;
}
