import type { DrillRecord } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { actionOfKey } from './action-of-key.ts';
import { DrillController } from './drill-controller.ts';
import { defaultRunnerSettings } from './runner-settings.ts';
import { type TrialEnvironment, trialEnvironment, trialPrescription } from './trial-environment.ts';

// The trial drill: 10 s to stand to, draw 3 s, hold 10 s, let down 3 s, rest 20 s. The clock begins at 1 s, so the first hold lasts from 14 s to 24 s.
const START_MS = 1000;
const HOLD_MS = START_MS + 13_000;

function begun(environment: TrialEnvironment = trialEnvironment()) {
  const heard: string[] = [];
  const drill = new DrillController(
    { prescription: trialPrescription(), settings: defaultRunnerSettings, environment },
    {
      ...{ onShow: () => {}, onBegin: () => {}, onNotice: (message) => heard.push(message) },
      onRep: ({ outcome, heldMs }) => heard.push(`${outcome} ${heldMs}`),
      onChange: ({ state, walk }) => heard.push(`${state} ${walk.step?.kind ?? 'end'}`),
      onEnd: ({ reps }) => heard.push(`end ${reps.length}`),
    },
  );
  drill.begin();
  return { drill, environment, heard };
}

/** What a key meant when it was pressed, done as of then. */
function pressKey(drill: DrillController, code: string, atMs: number): void {
  const action = actionOfKey(code, defaultRunnerSettings.keys, drill.standAt(atMs));
  if (action) drill.press(action, atMs);
}

describe('a page that is busy', () => {
  it('logs the true hold of a press that it handles late', () => {
    const { drill, environment, heard } = begun();
    environment.pass(HOLD_MS + 4000 - START_MS);
    environment.sleep(1500); // the page hangs; the press comes 0.3 s into that
    pressKey(drill, 'Space', HOLD_MS + 4300);
    expect(heard).toContain('short 4300');
    expect(drill.view).toMatchObject({ step: { kind: 'letDown' }, msLeft: 3000 - 1200 });
  });

  it('handles the presses that wait before it walks past the end of the hold', () => {
    const environment = trialEnvironment();
    const waiting: (() => void)[] = [];
    environment.afterPresses = (fn) => waiting.push(fn);
    const { drill, heard } = begun(environment);
    environment.pass(HOLD_MS + 9000 - START_MS);
    environment.sleep(2000);
    environment.pass(50); // the frame comes first
    expect(heard.some((line) => line.startsWith('held'))).toBe(false);
    pressKey(drill, 'Space', HOLD_MS + 9500);
    for (const fn of waiting.splice(0)) fn();
    expect(heard).toContain('short 9500');
  });

  it('takes the space bar of the hold for what it meant then, and does not pause the rest', () => {
    const { drill, environment, heard } = begun();
    environment.pass(HOLD_MS + 10_000 + 3200 - START_MS);
    expect(drill.view.step?.kind).toBe('rest');
    pressKey(drill, 'Space', HOLD_MS + 9990);
    expect(drill.view).toMatchObject({ state: 'running', step: { kind: 'rest' } });
    expect(heard).toContain('held 10000');
  });

  it('lets down at the moment of the press, then pauses, where pause is pressed in a hold', () => {
    const { drill, environment, heard } = begun();
    environment.pass(HOLD_MS + 4000 - START_MS);
    environment.sleep(800);
    pressKey(drill, 'KeyP', HOLD_MS + 4100);
    expect(heard).toContain('short 4100');
    expect(drill.view).toMatchObject({ state: 'paused', step: { kind: 'letDown' }, msLeft: 3000 });
  });

  it('takes two presses half a second apart as two, and a bounce as one, whenever it handles them', () => {
    const { drill, environment, heard } = begun();
    environment.pass(2000);
    environment.sleep(1000);
    for (const afterMs of [100, 110, 600, 620]) drill.press('pauseOrResume', START_MS + 2000 + afterMs);
    expect(heard.filter((line) => /^(paused|running) ready$/.test(line))).toEqual([
      'running ready',
      'paused ready',
      'running ready',
    ]);
    expect(drill.view.msLeft).toBe(10_000 - 2500);
  });

  it('does not take a second press from before the question for an answer to it', () => {
    const { drill, environment, heard } = begun();
    environment.pass(2000);
    environment.sleep(1000);
    drill.press('stop', START_MS + 2100);
    drill.press('stop', START_MS + 2600);
    expect(drill.isAskingToStop).toBe(true);
    expect(heard.some((line) => line.startsWith('end'))).toBe(false);
    environment.pass(500);
    drill.press('stop');
    expect(drill.view.state).toBe('stopped');
  });

  it('still finds that time was lost, whatever was pressed as it woke', () => {
    const { drill, environment, heard } = begun();
    environment.pass(HOLD_MS + 4000 - START_MS);
    environment.sleep(8000);
    drill.press('letDownNow');
    expect(heard).toContain('unsure 4000');
    expect(drill.view).toMatchObject({ state: 'paused', pausedBy: 'gap' });
  });

  it('however long the page was busy, a let-down in a hold is logged at its press', () => {
    const times = fc.record({ heldMs: fc.integer({ min: 100, max: 9900 }), busyMs: fc.integer({ min: 0, max: 4000 }) });
    fc.assert(
      fc.property(times, fc.double({ min: 0, max: 1, noNaN: true }), ({ heldMs, busyMs }, share) => {
        const environment = trialEnvironment();
        const waiting: (() => void)[] = [];
        environment.afterPresses = (fn) => waiting.push(fn);
        const { drill, heard } = begun(environment);
        const lookedMs = Math.max(0, heldMs - Math.floor(busyMs * share));
        environment.pass(HOLD_MS + lookedMs - START_MS);
        environment.sleep(heldMs - lookedMs + Math.ceil(busyMs * (1 - share)));
        pressKey(drill, 'Space', HOLD_MS + heldMs);
        environment.pass(1);
        for (const fn of waiting.splice(0)) fn();
        expect(heard).toContain(`short ${heldMs}`);
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});

describe('a hold that the device does not live through', () => {
  it('is reported every two seconds, so that no more than that is unknown of it', () => {
    const environment = trialEnvironment();
    const heldMs: number[] = [];
    const drill = new DrillController(
      { prescription: trialPrescription({ holdMs: 30_000 }), settings: defaultRunnerSettings, environment },
      {
        ...{ onShow: () => {}, onBegin: () => {}, onNotice: () => {}, onRep: () => {}, onEnd: () => {} },
        onChange: ({ ledger, walk }) => {
          if (walk.step?.kind === 'hold') heldMs.push(walk.stepMs - (walk.dueAtMs - (ledger.seenMs ?? 0)));
        },
      },
    );
    drill.begin();
    environment.pass(HOLD_MS + 29_000 - START_MS);
    expect(heldMs).toEqual(Array.from({ length: 15 }, (_, index) => index * 2000));
  });

  it('is not reported again in a rest, where nothing is at stake', () => {
    const { environment, heard } = begun();
    environment.pass(HOLD_MS + 13_000 + 18_000 - START_MS);
    expect(heard.filter((line) => line === 'running rest')).toHaveLength(1);
  });
});

describe('a page that is looked at once a second for four hours', () => {
  it('holds to the millisecond, and loses no time', () => {
    const environment = trialEnvironment();
    const block = { sets: 1, reps: 60, drawMs: 500, holdMs: 180_000, letDownMs: 500, restMs: 60_000 };
    const ended: DrillRecord[] = [];
    const drill = new DrillController(
      { prescription: trialPrescription(block), settings: defaultRunnerSettings, environment },
      {
        ...{ onShow: () => {}, onBegin: () => {}, onNotice: () => {}, onRep: () => {}, onChange: () => {} },
        onEnd: (record) => ended.push(record),
      },
    );
    drill.begin();
    for (let second = 0; ended.length === 0 && second < 5 * 3600; second++) {
      environment.sleep(950);
      environment.pass(50);
    }
    const [{ reps, durationMs } = fail()] = ended;
    expect(reps.map(({ outcome, heldMs }) => [outcome, heldMs])).toEqual(Array(60).fill(['held', 180_000]));
    // Ten seconds to stand to, then 60 draws, holds and let-downs and the 59 rests between them.
    expect(durationMs).toBe(10_000 + 60 * 181_000 + 59 * 60_000);
  });
});

function fail(): never {
  throw new Error('the drill did not end');
}
