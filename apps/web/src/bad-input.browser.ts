import {
  builtInPrograms,
  createJournal,
  type DrillRecord,
  emptySeason,
  type Journal,
  type Program,
} from '@larkhold/engine';
import { loadWords, useWords } from '@larkhold/words';
import { afterEach, expect, test } from 'vitest';
import { page as frame } from 'vitest/browser';
import '@larkhold/ui/tokens.css';
import { leaveTrial, openTrialApp, type TrialApp } from './shell/trial-app.ts';

let trial: TrialApp;

afterEach(leaveTrial);

/** A word of German length that nothing may part at a space. */
const unbroken = (length: number): string => 'Schulterblattspannung'.repeat(Math.ceil(length / 21)).slice(0, length);
const rep = { block: 0, set: 0, hand: 'usual', prescribedMs: 20_000, heldMs: 20_000, outcome: 'held' } as const;
const stamp = '2026-11-24T06:00:00Z';
const record: DrillRecord = {
  ...{ id: 'many', program: unbroken(120), date: '2026-11-24', startedAt: stamp, endedAt: stamp, editedAt: stamp },
  ...{ note: unbroken(4000), pain: true },
  reps: Array.from({ length: 300 }, (_, at) => ({
    ...rep,
    rep: at,
    ...(at % 9 === 4 && { outcome: 'short', heldMs: 9000 }),
  })),
};
const journal: Journal = {
  ...createJournal(),
  drills: [record],
  days: [{ date: '2026-11-24', note: unbroken(4000), feelWords: unbroken(200), place: unbroken(60), pain: true }],
  weeks: [{ week: '2026-W48', focus: unbroken(400), goal: unbroken(1000), wentRight: unbroken(4000) }],
  milestones: [{ id: 'm', text: unbroken(400), setDay: '2026-11-20' }],
  notes: [{ id: 'n', madeAt: stamp, text: unbroken(2000) }],
};
const [holding] = builtInPrograms.filter(({ title }) => title === 'Holding');
const programs = Array.from({ length: 40 }, (_, at) => ({
  ...holding!,
  ...{ id: `9f0c1a52-1f0a-4c8e-9a31-0d2b6a7e${1000 + at}`, title: `${at} ${unbroken(117)}`.slice(0, 120) },
})) as Program[];
const restDays = [{ from: '2026-12-24', to: '2026-12-27', why: unbroken(200) }];
const competitions = [{ title: unbroken(120), day: '2026-12-19', importance: 'main' as const }];

/** What reaches past the edge, by its names, the innermost of each. */
function wideIn(root: Element): string[] {
  const inner = [...(root.shadowRoot?.children ?? []), ...root.children].flatMap(wideIn);
  if (inner.length > 0) return [...new Set(inner)].slice(0, 6).map((name) => `${root.localName} ${name}`.slice(-120));
  const { left, right, width } = root.getBoundingClientRect();
  const isWide = right > 321 || (left + root.scrollWidth > 321 && getComputedStyle(root).overflowX === 'visible');
  return isWide && width > 1 ? [`${root.localName}.${root.getAttribute('class') ?? ''}`] : [];
}

const pages = [
  ...['line', 'rack', `rack/${programs[0]!.id}`, `bench/${programs[0]!.id}`, `plan/${programs[0]!.id}`, 'season'],
  ...['journal', 'journal/many', 'week', 'milestones', 'trends', 'known', 'files', 'kit', 'kit/controls', 'kit/stored'],
];

test('with words that nothing parts, forty programs and three hundred reps, no page is wider than the smallest phone, in German and twice the text', async () => {
  useWords(await loadWords('de'));
  await frame.viewport(320, 640);
  document.documentElement.style.fontSize = '200%';
  trial = await openTrialApp('#/line');
  const { act } = trial.state.app!;
  expect(await act.takeIn({ journal, programs })).toBeDefined();
  await act.putSeason({ ...emptySeason(unbroken(120)), restDays, competitions });
  await act.chooseProgram(programs[0]!.id!);
  expect(trial.state.app!.view.programs.length).toBeGreaterThanOrEqual(40);
  const wide: string[] = [];
  for (const hash of pages) {
    location.hash = `#/${hash}`;
    await expect
      .poll(() => trial.page.shadowRoot?.querySelector('main > :last-child')?.shadowRoot?.querySelector('h1'), {
        timeout: 20_000,
      })
      .toBeTruthy();
    await new Promise((resolve) => setTimeout(resolve, 120));
    const { scrollWidth } = document.documentElement;
    if (scrollWidth > 320) wide.push(`${hash}: ${scrollWidth}, ${wideIn(trial.page).join(' ')}`);
  }
  expect(wide).toEqual([]);
}, 60_000);
