import { builtInPrograms, createJournal, formatProgram, type Program, parseProgram } from '@larkhold/engine';
import { createKit } from '@larkhold/store';
import type { LarkTimelinePicture } from '@larkhold/ui';
import axe from 'axe-core';
import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { page as frame } from 'vitest/browser';
import type { App } from '../../shell/app-context.ts';
import './bench-page.ts';
import type { BenchPage } from './bench-page.ts';
import type { Draft } from './draft.ts';
import type { DraftKeeper } from './draft-keeper.ts';

const opened: Program = { ...builtInPrograms[0]!, id: '6d1a3a0c-52b7-4b8e-8d60-7f1f6a1b2c3d', title: 'Evening holds' };

function memoryKeeper(): DraftKeeper & { drafts: Map<string, Draft> } {
  const drafts = new Map<string, Draft>();
  return {
    drafts,
    read: (address) => drafts.get(address),
    keep: (address, draft) => void (draft ? drafts.set(address, draft) : drafts.delete(address)),
  };
}

function trialApp() {
  const put: Program[] = [];
  const view: Partial<App['view']> = {
    ...{ today: '2026-11-25', programs: [...builtInPrograms, opened], openedIds: new Set([opened.id!]) },
    ...{ journal: createJournal(), kit: { ...createKit(), maxHoldSeconds: 60 } },
  };
  const act: Partial<App['act']> = {
    newId: () => crypto.randomUUID(),
    putProgram: async (program) => put.push(program) > 0,
  };
  return { app: { view, act } as App, put };
}

async function benchOf(programId: string, keeper = memoryKeeper()) {
  const { app, put } = trialApp();
  const bench = document.createElement('bench-page');
  Object.assign(bench, { programId, keeper, app });
  document.body.append(bench);
  await bench.updateComplete;
  return { bench, put, keeper };
}

const byId = <T extends HTMLElement>(bench: BenchPage, id: string) => bench.renderRoot.querySelector<T>(`#${id}`)!;
const words = (bench: BenchPage, id: string) => byId(bench, id).textContent?.replaceAll('\u00a0', ' ').trim();
function button(bench: BenchPage, text: string, place = 0) {
  return [...bench.renderRoot.querySelectorAll('button')].filter((one) => one.textContent?.trim() === text)[place]!;
}
async function type(bench: BenchPage, id: string, text: string) {
  const input = byId<HTMLInputElement>(bench, id);
  input.focus();
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true }));
  await bench.updateComplete;
}
async function press(bench: BenchPage, text: string, place = 0) {
  button(bench, text, place).focus();
  button(bench, text, place).click();
  await bench.updateComplete;
  await new Promise(requestAnimationFrame);
}

afterEach(() => {
  history.replaceState(null, '', '#');
});

afterEach(() => frame.viewport(414, 896));

test('a change shows at once in the times, and can be taken back by key', async () => {
  const { bench } = await benchOf('new');
  expect(words(bench, 'tension-time')).toBe('25 s'); // 5 holds of 5 s
  await type(bench, 'field-blocks-0-hold', '7');
  await type(bench, 'field-blocks-0-hold', '7.');
  expect(byId<HTMLInputElement>(bench, 'field-blocks-0-hold').value).toBe('7.');
  await type(bench, 'field-blocks-0-hold', '7.2');
  expect(words(bench, 'tension-time')).toBe('36 s');
  window.dispatchEvent(new KeyboardEvent('keydown', { key: 'z', ctrlKey: true }));
  await bench.updateComplete;
  expect(words(bench, 'tension-time')).toBe('25 s');
  window.dispatchEvent(new KeyboardEvent('keydown', { key: 'Z', ctrlKey: true, shiftKey: true }));
  await bench.updateComplete;
  expect(byId<HTMLInputElement>(bench, 'field-blocks-0-hold').value).toBe('7.2');
});

/** The strokes of all blocks in one row, as they are drawn. */
const strokes = (bench: BenchPage) =>
  bench.renderRoot
    .querySelector<LarkTimelinePicture>('.in-one')
    ?.renderRoot.querySelector('.strokes')
    ?.getAttribute('d');

/** Everything that is worked out of the draft and shown. */
const workedOut = (bench: BenchPage) => ({
  total: words(bench, 'total-time'),
  tension: words(bench, 'tension-time'),
  timeline: strokes(bench),
  fatigue: bench.renderRoot.querySelector('svg.fatigue .curve')?.getAttribute('d'),
  weeks: bench.renderRoot.querySelector('.weeks tbody')?.textContent,
  line: bench.renderRoot.querySelector('.blocks code')?.textContent,
});

test('one change changes every number and picture at once, and one undo brings all of them back', async () => {
  const { bench } = await benchOf('new');
  await press(bench, 'Write a ladder yourself');
  const before = workedOut(bench);
  expect(Object.values(before).every(Boolean)).toBe(true);
  await type(bench, 'field-blocks-0-hold', '7');
  await new Promise(requestAnimationFrame);
  const after = workedOut(bench);
  for (const key of Object.keys(before) as (keyof typeof before)[]) {
    expect([key, after[key]]).not.toEqual([key, before[key]]);
    expect(after[key]).toBeTruthy();
  }
  expect(after).toMatchObject({ tension: '35 s', line: '1x5 hold 7 rest 20' }); // 5 holds of 7 s
  await press(bench, 'Undo');
  expect(workedOut(bench)).toEqual(before);
  await press(bench, 'Redo');
  expect(workedOut(bench)).toEqual(after);
});

test('the drill is drawn as strokes to scale, in words too, and on a wide screen beside the form, a row for each block', async () => {
  await frame.viewport(1280, 800);
  const { bench } = await benchOf('new');
  await press(bench, 'Add a block');
  await type(bench, 'field-blocks-1-hold', '10');
  await new Promise(requestAnimationFrame);
  const picture = (look: string) => bench.renderRoot.querySelector<LarkTimelinePicture>(look)!;
  const feet = [...(strokes(bench) ?? '').matchAll(/M([\d.]+) [\d.]+Q[\d.]+ [\d.]+ [\d.]+ ([\d.]+)/g)].map(
    ([, x, top]) => [Number(x), Number(top)],
  );
  expect(feet).toHaveLength(10);
  const apart = feet.map(([x = 0], at) => x - (feet[at - 1]?.[0] ?? 0));
  // A rep of the first block comes every 3 + 5 + 3 + 20 s, of the second every 3 + 10 + 3 + 20 s.
  expect((apart[8] ?? 0) / (apart[2] ?? 1)).toBeCloseTo(36 / 31, 2);
  const tall = feet.map(([, top = 0]) => 46 - top);
  expect((tall[0] ?? 0) / (tall[9] ?? 1)).toBeCloseTo(0.5, 1); // 5 s of 10 s
  expect(
    picture('.in-one').renderRoot.querySelector('[role=img]')?.getAttribute('aria-label')?.replaceAll('\u00a0', ' '),
  ).toMatch(/^5 holds of 5 s and 5 holds of 10 s in \d+ min \d+ s, drawn to scale$/);
  expect(picture('.in-one').checkVisibility()).toBe(false);
  const rows = [...picture('.by-block').renderRoot.querySelectorAll('li')];
  expect(rows.map((row) => row.textContent?.replaceAll(/\s+/g, ' ').trim())).toEqual([
    'New block5 holds of 5 s',
    'New block5 holds of 10 s',
  ]);
  const [form, bar] = ['.form', '.bar'].map((one) => bench.renderRoot.querySelector(one)!.getBoundingClientRect());
  expect(bar!.left).toBeGreaterThanOrEqual(form!.right);
  await frame.viewport(390, 844);
  expect([picture('.in-one').checkVisibility(), picture('.by-block').checkVisibility()]).toEqual([true, false]);
});

test('three ladders are ready in words; pressed, one is the block’s, and the fold that says it has the focus', async () => {
  const { bench, put } = await benchOf('new');
  const ready = () =>
    [...bench.renderRoot.querySelectorAll('.ready')].map((one) => one.textContent?.replaceAll(/\s+/g, ' ').trim());
  expect(ready()).toEqual([
    expect.stringMatching(/^Longer holds ?One step up after 2 clean sessions.*hold by 1 s, up to 10 s/),
    expect.stringMatching(/^More reps, then longer holds.*reps by 1 rep, up to 8 reps.*Then the hold by 1 s/),
    expect.stringMatching(/^Gently, in small steps.*after 4 clean sessions, if the effort was 5 of 10/),
  ]);
  expect((await axe.run(bench)).violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
  bench.renderRoot.querySelectorAll<HTMLButtonElement>('.ready')[1]!.click();
  await bench.updateComplete;
  expect(ready()).toEqual([]);
  expect((bench.renderRoot as ShadowRoot).activeElement?.textContent).toMatch(/reps by 1\srep, up to 8\sreps/);
  await press(bench, 'Save');
  expect(put[0]?.blocks[0]?.ladder?.rungs).toMatchObject([
    { raise: 'reps', by: 1, until: 8 },
    { raise: 'hold', by: 1, until: 10, resets: { reps: 5 } },
  ]);
  bench.remove();
  // No ladder is offered that the program could not have: 45 s is the longest hold to grow to, 60 the most reps.
  const full = await benchOf('new');
  await type(full.bench, 'field-blocks-0-hold', '45');
  await type(full.bench, 'field-blocks-0-reps', '60');
  expect(full.bench.renderRoot.querySelectorAll('.ready')).toHaveLength(0);
});

test('what is not valid is shown beside its field and is not saved', async () => {
  const { bench, put } = await benchOf('new');
  await type(bench, 'field-blocks-0-hold', '500');
  expect(byId(bench, 'field-blocks-0-hold').getAttribute('aria-invalid')).toBe('true');
  expect(words(bench, 'field-blocks-0-hold-words')).toBe('Expected at most 180. Found 500.');
  await press(bench, 'Save');
  expect(put).toEqual([]);
  expect((bench.renderRoot as ShadowRoot).activeElement?.id).toBe('field-blocks-0-hold');
});

test('whatever is typed into whatever field, only a valid program is saved', async () => {
  const texts = [
    '',
    ' ',
    '0',
    '-0',
    '-1',
    '1e999',
    '0.5',
    '7,5',
    '20',
    '30',
    '181',
    '2.55',
    'ten',
    '<b>x</b>',
    'NaN',
    '\u0000',
  ];
  const typed = fc.array(fc.tuple(fc.nat(), fc.constantFrom(...texts)), { minLength: 1, maxLength: 4 });
  const counts = { saved: 0, refused: 0 };
  for (const entries of fc.sample(typed, { seed: 1_120_553, numRuns: 40 })) {
    const { bench, put } = await benchOf('new');
    for (const [place, text] of entries) {
      const fields = [...bench.renderRoot.querySelectorAll<HTMLInputElement>('[id^=field-]:is(input, textarea)')];
      await type(bench, fields[place % fields.length]?.id ?? '', text);
    }
    await press(bench, 'Save');
    if (put.length > 0) counts.saved += 1;
    else counts.refused += 1;
    for (const program of put) expect(parseProgram(formatProgram(program))).toEqual({ ok: true, program });
    const isMarked = bench.renderRoot.querySelector('[aria-invalid=true], .problem, .notice') !== null;
    expect(isMarked).toBe(put.length === 0);
    bench.remove();
  }
  expect(Math.min(counts.saved, counts.refused)).toBeGreaterThan(5); // so that both have been seen
});

test('blocks are added, moved, doubled and removed, and the focus stays with them', async () => {
  const { bench, put } = await benchOf('new');
  await press(bench, 'Add a block');
  await type(bench, 'field-blocks-1-title', 'Second');
  await press(bench, 'Up', 1);
  expect(byId<HTMLInputElement>(bench, 'field-blocks-0-title').value).toBe('Second');
  const active = (bench.renderRoot as ShadowRoot).activeElement;
  expect(active?.closest('li')?.querySelector('h3')?.textContent).toBe('1. Second');
  await press(bench, 'Duplicate', 0);
  await press(bench, 'Remove', 2);
  await press(bench, 'Save');
  expect(put[0]?.blocks.map(({ title }) => title)).toEqual(['Second', 'Second']);
  expect(location.hash).toBe(`#/rack/${put[0]?.id}`);
});

test('a built-in program is copied, an opened one is edited', async () => {
  const copy = await benchOf(builtInPrograms[1]!.id!);
  await press(copy.bench, 'Save');
  expect(copy.put[0]?.id).not.toBe(builtInPrograms[1]!.id);
  expect(copy.put[0]?.title).toBe(`${builtInPrograms[1]!.title} (2)`);
  copy.bench.remove();
  const own = await benchOf(opened.id!);
  await type(own.bench, 'field-about', 'Slowly.');
  await press(own.bench, 'Save');
  expect(own.put[0]).toEqual({ ...opened, about: 'Slowly.' });
});

test('a title that is in use asks: keep both or replace', async () => {
  const { bench, put } = await benchOf('new');
  await type(bench, 'field-title', opened.title);
  await press(bench, 'Save');
  expect(put).toEqual([]);
  await press(bench, 'Keep both');
  expect(put[0]?.title).toBe('Evening holds (2)');
  await press(bench, 'Save');
  await press(bench, 'Replace it');
  expect(put[1]).toMatchObject({ id: opened.id, title: opened.title });
});

test('an unsaved draft is there again after a reload, and gone once saved', async () => {
  const keeper = memoryKeeper();
  const first = await benchOf('new', keeper);
  await type(first.bench, 'field-title', 'Half-written');
  await type(first.bench, 'field-blocks-0-hold', 'ten');
  first.bench.remove();
  const second = await benchOf('new', keeper);
  expect(byId<HTMLInputElement>(second.bench, 'field-title').value).toBe('Half-written');
  expect(byId<HTMLInputElement>(second.bench, 'field-blocks-0-hold').value).toBe('ten');
  await press(second.bench, 'Start over');
  expect(byId<HTMLInputElement>(second.bench, 'field-title').value).toBe('New program');
  await press(second.bench, 'Undo');
  expect(byId<HTMLInputElement>(second.bench, 'field-title').value).toBe('Half-written');
  await type(second.bench, 'field-blocks-0-hold', '10');
  await press(second.bench, 'Save');
  expect(keeper.drafts.size).toBe(0);
});

test('a ladder is given and its weeks are shown', async () => {
  const { bench, put } = await benchOf('new');
  await press(bench, 'Write a ladder yourself');
  await type(bench, 'field-blocks-0-ladder-rungs-0-by', '2');
  await press(bench, 'Add lighter weeks');
  expect(bench.renderRoot.querySelectorAll('.weeks tbody tr')).toHaveLength(8);
  expect(bench.renderRoot.querySelector('.weeks')?.textContent).toContain('Lighter week');
  await type(bench, 'field-blocks-0-ladder-rungs-0-until', '3');
  expect(words(bench, 'field-blocks-0-ladder-rungs-0-until-words')).toMatch(/could never be climbed/);
  await type(bench, 'field-blocks-0-ladder-rungs-0-until', '9');
  await press(bench, 'Save');
  expect(put[0]?.blocks[0]?.ladder).toMatchObject({
    rungs: [{ raise: 'hold', by: 2, until: 9 }],
    deload: { everyWeeks: 4 },
  });
});

test('has no fault that axe knows, whole and with problems', async () => {
  const { bench } = await benchOf(builtInPrograms[2]!.id!);
  for (const fold of bench.renderRoot.querySelectorAll('details')) fold.open = true;
  expect((await axe.run(bench)).violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
  await type(bench, 'field-blocks-0-hold', '');
  expect((await axe.run(bench)).violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
});

test('a quick line becomes a block, and a wrong word is pointed at', async () => {
  const { bench, put } = await benchOf('new');
  const quick = bench.renderRoot.querySelector('lark-quick-line')!;
  const enter = async (text: string) => {
    const input = quick.renderRoot.querySelector('input')!;
    input.value = text;
    input.dispatchEvent(new InputEvent('input'));
    quick.renderRoot.querySelector('button')!.click();
    await quick.updateComplete;
    await bench.updateComplete;
  };
  await enter('3x10 hold 30 rset 2x');
  expect(quick.renderRoot.querySelector('mark')?.textContent).toBe('rset');
  expect((await axe.run(quick)).violations.map(({ id }) => id)).toEqual([]);
  await enter('3x10 hold 30 rest 2x, set rest 2m');
  const lines = () => [...bench.renderRoot.querySelectorAll('.blocks code')].map((line) => line.textContent);
  expect(lines()).toEqual(['3x10 hold 30 rest 2x, set rest 2m']); // in the place of the block that nobody touched
  await enter('1x5 hold 10 rest 20');
  expect(lines()).toEqual(['3x10 hold 30 rest 2x, set rest 2m', '1x5 hold 10 rest 20']);
  await press(bench, 'Save');
  expect(put[0]?.blocks[0]).toMatchObject({
    title: 'Holds',
    sets: 3,
    reps: 10,
    hold: 30,
    rest: { timesHold: 2 },
    setRest: 120,
  });
});
