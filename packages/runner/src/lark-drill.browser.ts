import type { DrillRecord, RepRecord, SessionSnapshot } from '@larkhold/engine';
import axe from 'axe-core';
import { expect, test } from 'vitest';
import './index.ts';
import { defaultRunnerSettings } from './runner-settings.ts';
import { glanceText, heard, press, trialDrill } from './trial-drill.ts';
import { trialEnvironment, trialPrescription } from './trial-environment.ts';

// Times follow from the prescription of the trial: ready 10 s, draw 3, hold 10, let down 3, rest 20.
const HOLD_AT_MS = 13_000;

test('it walks through the phases with word and number', async () => {
  const { drill, environment } = await trialDrill();
  drill.begin();
  const seen: string[] = [];
  for (const spanMs of [0, 9_500, 1_000, 3_000, 9_900, 1_000, 3_000]) {
    environment.pass(spanMs);
    seen.push(`${await glanceText(drill, '.word')} ${await glanceText(drill, '.seconds')}`);
  }
  expect(seen).toEqual(['Get ready 10', 'Get ready 1', 'Draw 3', 'Hold 10', 'Let down 3', 'Let down 2', 'Rest 19']);
  expect(await glanceText(drill, '.place')).toBe('Set 1 of 2 · rep 2 of 2');
});

test('events tell of the whole drill, and the record closes', async () => {
  const { drill, environment } = await trialDrill();
  const begun = heard<{ record: DrillRecord }>(drill, 'lark-begin');
  const reps = heard<{ rep: RepRecord; record: DrillRecord; snapshot: SessionSnapshot }>(drill, 'lark-rep');
  const changes = heard<{ snapshot: SessionSnapshot }>(drill, 'lark-change');
  const ended = heard<{ record: DrillRecord }>(drill, 'lark-end');
  drill.begin();
  expect(begun[0]?.record).toMatchObject({ id: 'trial-drill', program: 'Morning holds', open: true });
  // 10 + 4 x 16 + 2 x 20 + 60 s.
  environment.pass(174_100);
  expect(reps.map(({ rep }) => rep.outcome)).toEqual(['held', 'held', 'held', 'held']);
  expect(reps.map(({ record }) => record.reps.length)).toEqual([1, 2, 3, 4]);
  expect(ended).toHaveLength(1);
  expect(ended[0]?.record.open).toBeUndefined();
  expect(ended[0]?.record.durationMs).toBe(174_000);
  // 16 steps, the first of which begins with the drill, and the end.
  const moments = changes.map(({ snapshot: { state, walk } }) => `${state} ${walk.nextIndex}`);
  expect(new Set(moments).size).toBe(17);
  expect(await glanceText(drill, '.word')).toBe('Done');
  expect(environment.armed).not.toContain('disarm');
  environment.pass(5_000);
  expect(environment.armed.at(-1)).toBe('disarm');
});

test('the space bar begins, lets down from a hold, and pauses a rest', async () => {
  const { drill, environment } = await trialDrill();
  const reps = heard<{ rep: RepRecord }>(drill, 'lark-rep');
  press('Space');
  expect(drill.view?.state).toBe('running');
  environment.pass(HOLD_AT_MS + 4_000);
  press('Space');
  expect(drill.view?.step?.kind).toBe('letDown');
  expect(reps[0]?.rep).toMatchObject({ outcome: 'short', heldMs: 4_000 });
  environment.pass(4_000);
  press('Space');
  expect(drill.view?.state).toBe('paused');
  environment.pass(1_000);
  press('Space');
  expect(drill.view?.state).toBe('running');
});

test('a repeated key, and the same one within 300 ms, count once', async () => {
  const { drill, environment } = await trialDrill();
  drill.begin();
  environment.pass(1_000);
  press('KeyP');
  environment.pass(250);
  press('KeyP');
  expect(drill.view?.state).toBe('paused');
  environment.pass(500);
  press('KeyP', { repeat: true });
  press('KeyP', { ctrlKey: true });
  expect(drill.view?.state).toBe('paused');
  press('KeyP');
  expect(drill.view?.state).toBe('running');
});

test('pause during a hold lets down first', async () => {
  const { drill, environment } = await trialDrill();
  drill.begin();
  environment.pass(HOLD_AT_MS + 2_000);
  press('KeyP');
  expect(drill.view).toMatchObject({ state: 'paused', step: { kind: 'letDown' }, lastRep: { outcome: 'short' } });
});

test('L lets down, N skips, R gives more rest', async () => {
  const { drill, environment } = await trialDrill();
  drill.begin();
  environment.pass(HOLD_AT_MS + 1_000);
  press('KeyL');
  expect(drill.view?.lastRep?.outcome).toBe('short');
  environment.pass(5_000);
  const before = drill.view!.msLeft;
  press('KeyR');
  // Engine rule: more rest is 30 s.
  expect(drill.view!.msLeft - before).toBeCloseTo(30_000, 3);
  press('KeyN');
  expect(drill.view?.lastRep).toMatchObject({ rep: 1, outcome: 'skipped' });
});

test('Escape asks, and stops only when pressed again within 3 s', async () => {
  const { drill, environment } = await trialDrill();
  const ended = heard<{ record: DrillRecord }>(drill, 'lark-end');
  drill.begin();
  environment.pass(1_000);
  press('Escape');
  await drill.updateComplete;
  expect(drill.renderRoot.querySelector('[role=alert]')?.textContent).toContain('Stop the drill?');
  environment.pass(3_100);
  await drill.updateComplete;
  expect(drill.renderRoot.querySelector('[role=alert]')).toBeNull();
  press('Escape');
  environment.pass(1_000);
  expect(ended).toHaveLength(0);
  press('Escape');
  expect(ended).toHaveLength(1);
  expect(drill.view?.state).toBe('stopped');
});

test('cues are armed again only when the origin moves, and never those that are over', async () => {
  const { drill, environment } = await trialDrill();
  drill.begin();
  environment.pass(HOLD_AT_MS);
  expect(environment.armed).toHaveLength(1);
  expect(environment.armed[0]).toMatchObject({ originMs: 1_000 });
  environment.pass(4_000);
  press('Space');
  const again = environment.armed[1];
  if (again === undefined || again === 'disarm') throw new Error('not armed again');
  // Let down 6 s early: all that follows is 6 s sooner, and the first cue is the let-down itself.
  expect(again.originMs).toBeCloseTo(1_000 - 6_000, 3);
  expect(again.cues[0]?.kind).toBe('letDown');
  environment.pass(4_000);
  press('KeyP');
  expect(environment.armed.at(-1)).toBe('disarm');
});

test.each([
  ['pause, in a rest', ['KeyP'], HOLD_AT_MS + 15_000],
  ['pause, in a hold: the let-down is taken back with it', ['KeyP'], HOLD_AT_MS + 4_000],
  ['stop', ['Escape', 'Escape'], HOLD_AT_MS + 15_000],
] as const)('%s silences what was armed in the same moment', async (_what, keys, atMs) => {
  const { drill, environment } = await trialDrill();
  drill.begin();
  environment.pass(atMs);
  for (const [index, key] of keys.entries()) {
    if (index > 0) environment.pass(400);
    press(key);
  }
  expect(environment.armed.at(-1)).toBe('disarm');
});

test.each([
  ['let down now', 'KeyL', HOLD_AT_MS + 4_000],
  ['skip in a hold', 'KeyN', HOLD_AT_MS + 4_000],
  ['skip in a rest', 'KeyN', HOLD_AT_MS + 15_000],
  ['more rest', 'KeyR', HOLD_AT_MS + 15_000],
] as const)('%s arms in the same moment what is true now, in place of what was', async (_what, key, atMs) => {
  const { drill, environment } = await trialDrill();
  drill.begin();
  environment.pass(atMs);
  expect(environment.armed).toHaveLength(1);
  press(key);
  const again = environment.armed[1];
  if (again === undefined || again === 'disarm') throw new Error('not armed again');
  const nowMs = environment.nowMs();
  for (const cue of again.cues) expect(again.originMs + cue.atMs).toBeGreaterThanOrEqual(nowMs - 1);
  expect(again.originMs).toBeCloseTo(drill.view!.originMs!, 6);
});

test('a kept session shows where it is and waits for Resume', async () => {
  const first = await trialDrill();
  const changes = heard<{ snapshot: SessionSnapshot }>(first.drill, 'lark-change');
  first.drill.begin();
  first.environment.pass(30_000);
  first.drill.remove();
  const resumeFrom = changes.at(-1)!.snapshot;
  const { drill, environment } = await trialDrill({ resumeFrom }, trialEnvironment({ startMs: 5 }));
  drill.begin();
  expect(drill.view).toMatchObject({ state: 'paused', progress: { repsDone: 1 } });
  expect(environment.armed).toEqual([]);
  press('KeyP');
  expect(drill.view?.state).toBe('running');
});

test('sound that never comes does not hold the drill back, and its trouble is shown at once', async () => {
  const { drill, environment } = await trialDrill({}, trialEnvironment({ unlock: new Promise(() => undefined) }));
  drill.begin();
  environment.pass(11_000);
  expect(drill.view?.step?.kind).toBe('draw');
  environment.trouble({ kind: 'refused', message: 'No sound yet.' });
  expect(await glanceText(drill, '.notice')).toBe('No sound yet.');
});

test("a coach's call is on the display from its moment to the next or the end of the hold", async () => {
  const calls = ['Shoulders low', 'Reach'];
  const settings = { ...defaultRunnerSettings, allowedCalls: ['Reach'] };
  const { drill, environment } = await trialDrill({ settings, prescription: trialPrescription({ calls }) });
  drill.begin();
  environment.pass(50);
  const due = environment.armed
    .flatMap((armed) => (armed === 'disarm' ? [] : armed.cues))
    .filter(({ kind }) => kind === 'call');
  expect(due.map(({ words }) => words)).toEqual([...calls, ...calls, ...calls, ...calls]);
  const seen: string[] = [];
  const placed: boolean[] = [];
  for (let atMs = 50; atMs < HOLD_AT_MS + 12_000; atMs += 50) {
    environment.pass(50);
    const words = await glanceText(drill, '.call');
    if (words !== seen.at(-1)) seen.push(words);
    if (words === calls[0]) expect(drill.view!.offsetMs).toBeGreaterThanOrEqual(due[0]!.atMs);
    if (words === calls[1]) expect(drill.view!.offsetMs).toBeGreaterThanOrEqual(due[1]!.atMs);
    placed.push(drill.renderRoot.querySelector('lark-glance')!.renderRoot.querySelector('.call') !== null);
  }
  expect(seen).toEqual(['', ...calls, '']);
  // Its place is kept all through the block, so that nothing jumps in mid-hold.
  expect(new Set(placed)).toEqual(new Set([true]));
});

test('a line that nobody allowed is neither said nor shown at full draw', async () => {
  const prescription = trialPrescription({ calls: ['Let go now', 'Reach'] });
  const { drill, environment } = await trialDrill({ prescription });
  drill.begin();
  environment.pass(HOLD_AT_MS + 9_000);
  expect(drill.view?.step?.kind).toBe('hold');
  expect(await glanceText(drill, '.call')).toBe('');
  const kinds = environment.armed.flatMap((armed) => (armed === 'disarm' ? [] : armed.cues.map(({ kind }) => kind)));
  expect(kinds).not.toContain('call');
});

test("the archer's own steps are on the display too, and a block without calls gives their place away", async () => {
  const steps = ['Set the hook'];
  const settings = { ...defaultRunnerSettings, shotProcess: steps, allowedCalls: steps };
  const own = await trialDrill({ settings, prescription: trialPrescription({ calls: 'shot-process' }) });
  own.drill.begin();
  own.environment.pass(HOLD_AT_MS + 9_000);
  expect(await glanceText(own.drill, '.call')).toBe('Set the hook');
  const { drill, environment } = await trialDrill();
  drill.begin();
  environment.pass(HOLD_AT_MS + 9_000);
  await drill.updateComplete;
  expect(drill.renderRoot.querySelector('lark-glance')!.renderRoot.querySelector('.call')).toBeNull();
});

test('settings reach the sound', async () => {
  const settings = { ...defaultRunnerSettings, soundLevel: 0.2, quiet: true };
  const { drill, environment } = await trialDrill({ settings });
  drill.begin();
  expect(environment.settings[0]).toEqual({ level: 0.2, voice: 'both', quiet: true });
});

test('every button is at least 64 px high, and the number in a hold at least 38 % of the shorter side', async () => {
  const { drill, environment } = await trialDrill();
  drill.begin();
  environment.pass(HOLD_AT_MS + 100);
  await drill.updateComplete;
  const buttons = [...drill.renderRoot.querySelectorAll('button')];
  expect(buttons.map((button) => button.textContent?.trim())).toEqual([
    'Let down now',
    'Pause',
    'Skip',
    'More rest',
    'End rest',
    'Stop',
  ]);
  for (const button of buttons) expect(button.getBoundingClientRect().height).toBeGreaterThanOrEqual(64);
  const seconds = drill.renderRoot.querySelector('lark-glance')!.renderRoot.querySelector<SVGTextElement>('.seconds')!;
  const shorter = Math.min(window.innerWidth, window.innerHeight);
  // The number is drawn in the bow's own units, and scaled: on the screen it is as large as both say.
  const scale = seconds.getScreenCTM()!.a;
  expect(Number.parseFloat(getComputedStyle(seconds).fontSize) * scale).toBeGreaterThanOrEqual(0.38 * shorter - 0.5);
});

test.each(['dark', 'light', 'contrast'] as const)('axe finds nothing in any phase, theme %s', async (theme) => {
  const { drill, environment } = await trialDrill({ settings: { ...defaultRunnerSettings, theme } });
  drill.style.height = '100vh';
  expect((await axe.run(drill, { resultTypes: ['violations'] })).violations).toEqual([]);
  drill.begin();
  for (const spanMs of [100, 10_000, 3_000, 10_000, 4_000]) {
    environment.pass(spanMs);
    await drill.updateComplete;
    expect((await axe.run(drill, { resultTypes: ['violations'] })).violations).toEqual([]);
  }
});
