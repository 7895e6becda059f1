// A drill with the screen off, from Begin to what was said after it: this archer only hears, and only presses keys. What is heard is compared
// whole, with its times; they follow from the trial's lengths by hand: 10 s to get ready, draw 3 s, hold 10 s, let down 3 s, rest 20 s and 60 s.
import { checkCall } from '@larkhold/engine';
import { expect, test } from 'vitest';
import './index.ts';
import { defaultRunnerSettings } from './runner-settings.ts';
import { press, heard as told, trialDrill } from './trial-drill.ts';
import { type TrialEnvironment, trialEnvironment, trialPrescription } from './trial-environment.ts';

const START_MS = 1000;

/** What was heard since last asked, as 'seconds words'. */
function ears(environment: TrialEnvironment): () => string[] {
  let from = 0;
  return () => {
    const now = environment.heard.slice(from);
    from = environment.heard.length;
    return now.map(({ atMs, words }) => `${Math.round((atMs - START_MS) / 100) / 10} ${words}`);
  };
}

const settings = { ...defaultRunnerSettings, voice: 'both', spoken: 'usual' } as const;

test('a drill is done by its sounds and keys alone, and every question of it is answered by keys', async () => {
  const { drill, environment } = await trialDrill({ settings, keysFrom: 'page' });
  drill.style.visibility = 'hidden';
  const ends = told<{ record: { reps: unknown[] } }>(drill, 'lark-end');
  const hear = ears(environment);
  press('Space');
  environment.pass(10_000 + 16_000 + 15_500);
  expect(hear()).toEqual([
    ...['0 Get ready. One of two', '10 Draw', '13 Hold', '18 Half', '20 three', '21 two', '22 one'],
    ...['23 Let down', '26 Rest', '41 Get ready. Two of two'],
  ]);
  // The second hold is let down at four seconds: the let-down answers the press, then the rest asks why.
  environment.pass(4500 + 3000 + 4000);
  press('KeyL');
  environment.pass(5000);
  expect(hear()).toEqual([
    ...['46 Draw', '49 Hold', '53 Let down', '56 Rest. Set two of two next'],
    '57.5 Why was it short? Form, tired, or interrupted?',
  ]);
  press('KeyL');
  environment.pass(1000);
  press('KeyL');
  expect(hear()).toEqual(['58 Form', '59 Tired']);
  environment.pass(1000);
  press('KeyR');
  environment.pass(1000);
  press('KeyP');
  environment.pass(5000);
  press('KeyP');
  environment.pass(1000);
  press('KeyC');
  environment.pass(6000);
  expect(hear()).toEqual([
    ...['60 More rest', '61 Paused', '66 Resumed. Rest', '67 Rest cut short', '72 Get ready. One of two'],
  ]);
  // The third is given up at full draw, the last is skipped before its draw: that ends the drill.
  environment.pass(4000 + 5000);
  press('KeyN');
  environment.pass(5000);
  expect(hear()).toEqual(['77 Draw', '80 Hold', '82 Let down', '85 Rest']);
  press('Escape');
  environment.pass(1000);
  press('KeyP');
  environment.pass(500);
  press('KeyP');
  environment.pass(500);
  expect(hear()).toEqual(['87 Stop? Press again to stop', '88 Paused', '88.5 Resumed. Rest']);
  environment.pass(12_500 + 1500 + 16_000 + 4000);
  expect(hear()).toEqual([
    ...['100.5 Get ready. Last one', '105.5 Draw', '108.5 Hold', '113.5 Half', '115.5 three', '116.5 two', '117.5 one'],
    ...['118.5 Let down', '121.5 Done'],
  ]);
  expect(ends).toHaveLength(1);
  expect(ends[0]?.record.reps).toMatchObject([
    { outcome: 'held' },
    { outcome: 'short', heldMs: 4000, why: 'tired' },
    { outcome: 'skipped', heldMs: 2000 },
    { outcome: 'held' },
  ]);
  for (const { words } of environment.heard) expect(checkCall(words)).toBeUndefined();
});

test('after the drill, effort, pain and doubtful reps are asked aloud and answered by keys; the answers are said back', async () => {
  const environment = trialEnvironment();
  const after = document.createElement('lark-after');
  const rep = { block: 0, set: 0, hand: 'usual', prescribedMs: 30_000 } as const;
  const reps = [
    { ...rep, rep: 0, heldMs: 30_000, outcome: 'held' },
    { ...rep, rep: 1, heldMs: 20_000, outcome: 'short' },
    { ...rep, rep: 2, heldMs: 12_000, outcome: 'unsure' },
  ] as const;
  const at = { startedAt: '2026-11-25T06:30:00+01:00', endedAt: '2026-11-25T06:40:00+01:00' };
  const record = { id: 'a', program: 'Morning holds', date: '2026-11-25', ...at, reps: [...reps] };
  Object.assign(after, { record, sound: settings, environment, keysFrom: 'page' });
  after.style.visibility = 'hidden';
  document.body.append(after);
  await after.updateComplete;
  const done: unknown[] = [];
  after.addEventListener('lark-after-done', (event) => event instanceof CustomEvent && done.push(event.detail));
  const hear = ears(environment);
  const answer = (code: string) => {
    environment.pass(1000);
    press(code);
    return hear().map((line) => line.replace(/^[\d.]+ /, ''));
  };
  environment.pass(2900);
  expect(hear()).toEqual([]);
  environment.pass(100);
  expect(hear()).toEqual(['3 How hard was it? Zero to ten']);
  // A pedal that bounces is one press: the element's own clock is the page's, so the keys here differ from press to press.
  expect(answer('Digit7')).toEqual(['Seven. Hard']);
  expect(answer('ArrowUp')).toEqual(['Eight. Very hard']);
  expect(answer('Space')).toEqual(['Any pain? In a joint, or a sharp pain']);
  expect(answer('ArrowDown')).toEqual(['No']);
  expect(answer('Enter')).toEqual(['Rep two. Why was it short? Form, tired, or interrupted?']);
  expect(answer('PageUp')).toEqual(['Form']);
  expect(answer('PageDown')).toEqual(['Rep three. Was it held?']);
  expect(answer('KeyR')).toEqual(['Held']);
  await new Promise((resolve) => setTimeout(resolve, 350));
  expect(answer('Space')).toEqual(['Saved']);
  expect(done).toMatchObject([{ effort: 8, pain: false, reps: [{}, { why: 'form' }, { outcome: 'held' }] }]);
  for (const { words } of environment.heard) expect(checkCall(words)).toBeUndefined();
});

test('the warm-up comes first where it is wanted: each line stays until a press, and no line orders a shot', async () => {
  const prescription = { ...trialPrescription(), warmUp: ['Band, ten slow pulls', 'Now loose a few', 'Arm circles'] };
  const { drill, environment } = await trialDrill({
    prescription,
    settings: { ...settings, saysWarmUp: true },
    keysFrom: 'page',
  });
  const hear = ears(environment);
  press('Space');
  environment.pass(60_000);
  await drill.updateComplete;
  expect(drill.view?.state).toBe('waiting');
  expect(hear()).toEqual(['0 Warm up first', '0 Band, ten slow pulls']);
  expect(drill.renderRoot.querySelector('.warm-up p')?.textContent).toContain('Band, ten slow pulls');
  for (const seconds of [60, 61]) {
    press('Space');
    environment.pass(1000);
    expect(hear()).toEqual([`${seconds} ${seconds === 60 ? '' : 'Arm circles'}`]);
  }
  press('Space');
  environment.pass(10_500);
  expect(hear()).toEqual(['62 Get ready. One of two', '72 Draw']);
});

test('where little is wanted, nothing is asked and no rep is counted', async () => {
  const { environment } = await trialDrill({ settings: { ...settings, spoken: 'least' }, keysFrom: 'page' });
  const hear = ears(environment);
  press('Space');
  environment.pass(10_000 + 3000 + 4000);
  press('KeyL');
  environment.pass(3000 + 5000);
  press('KeyL');
  expect(hear()).toEqual(['0 Get ready', '10 Draw', '13 Hold', '17 Let down', '20 Rest']);
});
