import type { LivedWeek, LivedYear } from './live-year.ts';

// Sizes in the picture's own units.
const WIDTH = 960;
const PANEL = 190;
const LEFT = 64;
const RIGHT = 60;
const TOP = 44;
const BARS = 110;
const inner = WIDTH - LEFT - RIGHT;

/**
 * Years under each other: a bar a week for the time at full draw, open where a rule made the week lighter, and a line for the longest hold
 * that was asked for. It carries its own ground, so that it can be read on any page.
 * @param years as lived
 * @returns an SVG file
 */
export function yearPicture(years: readonly LivedYear[]): string {
  const height = years.length * PANEL + 30;
  const words = years.map(({ archer, weeks }) => {
    const minutes = Math.round(weeks.reduce((sum, { heldMs }) => sum + heldMs, 0) / 60_000);
    return `${archer.name}: ${minutes} minutes at full draw over the year.`;
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-labelledby="title about">`,
    `<title id="title">A year of ${years.length} invented archers</title>`,
    `<desc id="about">${words.join(' ')}</desc>`,
    '<style>text{font:13px system-ui,sans-serif;fill:#1d1a15}.dim{fill:#5c5549}.name{font-weight:700;font-size:15px}.bar{fill:#96500a}',
    '.light{fill:#f6f1e7;stroke:#96500a;stroke-width:1.5}.ask{fill:none;stroke:#1d1a15;stroke-width:1.5;stroke-dasharray:5 3}.rule{stroke:#cfc5b3}</style>',
    `<rect width="${WIDTH}" height="${height}" fill="#f6f1e7"/>`,
    ...years.map((year, index) => `<g transform="translate(0 ${index * PANEL})">${panelOf(year)}</g>`),
    `<text class="dim" x="${LEFT}" y="${height - 10}">Bars: minutes at full draw a week; open: a lighter week by a rule. Dashed: longest hold asked, seconds.</text>`,
    '</svg>',
    '',
  ].join('\n');
}

function panelOf({ archer, weeks }: LivedYear): string {
  const mostMinutes = Math.max(1, Math.ceil(Math.max(...weeks.map(({ heldMs }) => heldMs / 60_000))));
  const mostSeconds = Math.max(10, Math.ceil(Math.max(...weeks.map(({ askedMs }) => askedMs / 1000)) / 10) * 10);
  const step = inner / weeks.length;
  const base = TOP + BARS;
  const bars = weeks.map(({ heldMs, rules }, index) => {
    const tall = round((heldMs / 60_000 / mostMinutes) * BARS);
    const isLight = isLighter(rules);
    return `<rect class="${isLight ? 'light' : 'bar'}" x="${round(LEFT + index * step + 1.5)}" y="${round(base - tall)}" width="${round(step - 3)}" height="${tall}"/>`;
  });
  const lines = stretches(weeks).map((stretch) => {
    const points = stretch.map(({ index, askedMs }) => {
      const y = base - (askedMs / 1000 / mostSeconds) * BARS;
      return `${round(LEFT + (index + 0.5) * step)} ${round(y)}`;
    });
    return `<path class="ask" d="M${points.join('L')}"/>`;
  });
  const marks = weeks.map(({ week }, index) =>
    index % 13 === 0 ? `<text class="dim" x="${round(LEFT + index * step)}" y="${base + 18}">${week}</text>` : '',
  );
  return [
    `<text class="name" x="${LEFT}" y="20">${archer.name}</text>`,
    `<text class="dim" x="${LEFT + 100}" y="20">${archer.about}</text>`,
    `<path class="rule" d="M${LEFT} ${base}H${WIDTH - RIGHT}"/>`,
    `<text class="dim" x="${LEFT - 8}" y="${TOP + 10}" text-anchor="end">${mostMinutes} min</text>`,
    `<text class="dim" x="${WIDTH - RIGHT + 8}" y="${TOP + 10}">${mostSeconds} s</text>`,
    ...[...bars, ...lines, ...marks],
  ].join('');
}

/** Rules that make a whole week lighter, not just a day. */
function isLighter(rules: readonly string[]): boolean {
  return ['deload', 'taper', 'pain'].some((rule) => rules.includes(rule));
}

/** Weeks without a drill part the line. */
function stretches(weeks: readonly LivedWeek[]): { index: number; askedMs: number }[][] {
  const all: { index: number; askedMs: number }[][] = [[]];
  for (const [index, { askedMs }] of weeks.entries()) {
    if (askedMs > 0) all.at(-1)?.push({ index, askedMs });
    else if (all.at(-1)?.length) all.push([]);
  }
  return all.filter((stretch) => stretch.length > 0);
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
