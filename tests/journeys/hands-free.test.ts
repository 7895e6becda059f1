import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, inject, it } from 'vitest';
import { type Archer, arrive, leaveAll } from './archer.ts';
import { clapWav } from './clap-wav.ts';
import { holdsFile, phase, takeProgram } from './drill-program.ts';
import { openHiddenTab } from './hidden-tab.ts';

interface Told {
  notices: string[];
  records: { reps: { outcome: string; heldMs: number }[] }[];
}

type Arrival = Parameters<typeof arrive>[1] & { holdSeconds: number; reps?: number };

const folder = mkdtempSync(join(tmpdir(), 'larkhold-claps-'));
/** Seconds after the microphone opens. The first is learned, and idle where the drill has not begun; the second falls into the hold. */
const CLAPS = [1.5, 18] as const;
writeFileSync(join(folder, 'claps.wav'), clapWav(CLAPS, 60));
const flags = [
  '--use-fake-device-for-media-stream',
  `--use-file-for-fake-audio-capture=${join(folder, 'claps.wav')}%noloop`,
  '--deny-permission-prompts',
];

/** An archer in front of the kit, whose drills are listened to. */
async function arriveAtKit({ before, ...options }: Omit<Arrival, 'holdSeconds' | 'reps'> = {}): Promise<Archer> {
  const archer = await arrive('', { flags, whole: true, ...options });
  if (before) await archer.context.addInitScript(before);
  await archer.context.addInitScript(() => {
    const told: Told = { notices: [], records: [] };
    Object.assign(window, { told });
    addEventListener('lark-notice', (event) => told.notices.push((event as CustomEvent).detail.message));
    addEventListener('lark-end', (event) => told.records.push((event as CustomEvent).detail.record));
  });
  await archer.page.goto(`${inject('address')}#/kit/controls`);
  await archer.page.reload();
  await archer.page.getByRole('heading', { name: 'Kit', exact: true }).waitFor();
  return archer;
}

/** Takes a program of holds, goes to the line and begins. */
async function begin(page: Page, holdSeconds: number, reps = 1): Promise<void> {
  await takeProgram(page, holdsFile(holdSeconds, reps));
  await page.keyboard.press('Space');
  await page.locator('lark-drill').waitFor();
}

/** The drill's own notice: the app has others. */
const NOTICE = `find('lark-glance')?.shadowRoot.querySelector('.notice')`;

const notice = (page: Page) => page.locator('lark-glance .notice');

async function readsNotice(page: Page, words: string): Promise<void> {
  await notice(page).getByText(words).waitFor();
}

/** Waits for the end of the drill, and gives what it told. */
async function end(page: Page): Promise<Told> {
  await page.getByText('How was it?').waitFor();
  return page.evaluate(() => (window as unknown as { told: Told }).told);
}

/** Learns in the kit what is pressed for letting down. */
async function learnLetDown(page: Page, press: () => Promise<void>, heard: string): Promise<void> {
  const learn = page.locator('lark-learn', { hasText: 'Let down now' });
  await learn.getByRole('button', { name: 'Learn' }).click();
  await press();
  await learn.getByText(`Heard: ${heard}`).waitFor();
  await learn.getByRole('button', { name: 'Done' }).click();
}

// Each drill takes its real time, most of it the ten seconds to get ready, so they run side by side.
describe.concurrent('hands-free', () => {
  afterAll(async () => {
    await leaveAll();
    rmSync(folder, { recursive: true });
  });

  it('a page that the browser froze for 20 s in a hold pauses, marks the rep unsure and waits for Resume', async ({
    expect,
  }) => {
    const countLocks = `
      globalThis.locks = [];
      const ask = navigator.wakeLock.request.bind(navigator.wakeLock);
      navigator.wakeLock.request = async (...all) => { const lock = await ask(...all); locks.push(lock); return lock; };`;
    const tab = await openHiddenTab(inject('address'), holdsFile(40, 2), 'Attic holds', countLocks);
    await tab.evaluate(`find('.begin').click()`);
    await tab.until('locks.length === 1');
    await tab.hide();
    await tab.until(`find('lark-drill')?.view?.step?.kind === 'hold' && find('lark-drill').view.msLeft < 38_500`);
    expect(await tab.evaluate('locks.map((lock) => lock.released)')).toEqual([true]);
    await tab.freeze();
    await new Promise((resolve) => setTimeout(resolve, 20_000));
    await tab.thaw();
    await tab.show();
    await tab.until(`find('lark-drill').view.state === 'paused'`);
    // The browser took the screen lock away; it is held again.
    await tab.until(`locks.length === 2 && !locks[1].released`);
    await tab.until(`${NOTICE}?.textContent.includes('A rep that was running is marked unsure.')`);
    await tab.evaluate(`[...find('lark-drill').shadowRoot.querySelectorAll('button')]
      .find((one) => one.textContent.includes('Resume')).click()`);
    await tab.until(`find('lark-drill').view.state === 'running' && !${NOTICE}?.textContent.trim()`);
    const press = `dispatchEvent(new KeyboardEvent('keydown', { code: 'Escape', cancelable: true }))`;
    await tab.evaluate(press);
    // A second press within 300 ms would count as a bounce.
    await new Promise((resolve) => setTimeout(resolve, 500));
    await tab.evaluate(press);
    await tab.until('told.records.length === 1');
    const { records, notices } = await tab.told();
    // All that was reported, but for the sound, which stopped with the page and may be reported before.
    expect(notices.filter((message) => !message.startsWith('The sound has stopped'))).toEqual([
      'Time was lost: the device slept or the page stopped. A rep that was running is marked unsure. Press Resume to go on.',
    ]);
    expect(records[0]?.reps.map(({ outcome }) => outcome)).toEqual(['unsure']);
    // Only what was lived through counts: some 2 s, and what a busy machine adds; never the 20 s that nobody saw.
    expect(records[0]?.reps[0]?.heldMs).toBeLessThan(20_000);
    await tab.close();
  });

  it('a clap is learned in the kit and lets down in a hold', async ({ expect }) => {
    const { page, faults, leave } = await arriveAtKit({
      permissions: ['microphone'],
      before: () => {
        const media = navigator.mediaDevices;
        const ask = media.getUserMedia.bind(media);
        media.getUserMedia = async (wishes) => {
          const stream = await ask(wishes);
          Object.assign(window, { openedAtMs: performance.now() });
          return stream;
        };
        addEventListener('lark-rep', () => {
          const { openedAtMs } = window as unknown as { openedAtMs: number };
          Object.assign(window, { letDownAfterMs: performance.now() - openedAtMs });
        });
      },
    });
    const microphone = page.getByLabel('Claps and loud clicks, by the microphone');
    expect(await microphone.isChecked()).toBe(false);
    await microphone.check();
    await learnLetDown(page, async () => undefined, 'Clap');
    await begin(page, 15);
    const { records, notices } = await end(page);
    expect(records[0]?.reps[0]?.outcome).toBe('short');
    const letDownAfterMs = await page.evaluate(() => (window as unknown as { letDownAfterMs: number }).letDownAfterMs);
    // It was this clap, and nothing else. How fast it was heard is not measured here.
    expect(Math.abs(letDownAfterMs / 1000 - CLAPS[1])).toBeLessThan(3);
    expect(notices.filter((message) => message.includes('microphone'))).toEqual([]);
    expect(faults).toEqual([]);
    await leave();
  });

  it('a drill in a tab that is truly hidden is walked, every rep is held, and coming back finds it where it is', async ({
    expect,
  }) => {
    const tab = await openHiddenTab(inject('address'), holdsFile(3, 2), 'Attic holds');
    await tab.evaluate(`find('.begin').click()`);
    await tab.until(`find('lark-drill')?.view?.state === 'running'`);
    await tab.hide();
    await tab.until('told.records.length === 1');
    const { records, changes, notices, endedWhile } = await tab.told();
    expect(records[0]?.reps.map(({ outcome, heldMs }) => [outcome, heldMs])).toEqual([
      ['held', 3000],
      ['held', 3000],
    ]);
    // It was walked to its end while hidden, and no time was lost.
    expect(endedWhile).toBe('hidden');
    expect(notices.filter((message) => message.startsWith('Time was lost'))).toEqual([]);
    const unseen = changes
      .filter(({ visibility }) => visibility === 'hidden')
      .map(({ kind }) => kind)
      .filter((kind, at, all) => kind !== all[at - 1]); // a hold is reported again every two seconds
    // A look on a busy machine can be late by more than a phase is long: a phase may be passed over, but none may be announced out of order.
    let toCome = ['draw', 'hold', 'letDown', 'rest', 'draw', 'hold', 'letDown'];
    for (const kind of unseen.slice(unseen[0] === 'ready' ? 1 : 0)) {
      if (kind === undefined) continue; // the drill is over
      expect(toCome).toContain(kind);
      toCome = toCome.slice(toCome.indexOf(kind) + 1);
    }
    await tab.show();
    await tab.until(`find('lark-after')?.shadowRoot.textContent.includes('How was it?')`);
    await tab.close();
  });

  it('a drill in a hidden tab whose sound is gone stops there, and credits nothing that nobody noticed', async ({
    expect,
  }) => {
    const keepContexts = `
      globalThis.made = [];
      globalThis.AudioContext = class extends AudioContext { constructor(...all) { super(...all); made.push(this); } };`;
    const tab = await openHiddenTab(inject('address'), holdsFile(20, 2), 'Attic holds', keepContexts);
    await tab.evaluate(`find('.begin').click()`);
    await tab.hide();
    await tab.until(`find('lark-drill')?.view?.step?.kind === 'hold'`);
    // An output that will not come back, as when its server is gone.
    await tab.evaluate(`made.forEach((audio) => { audio.resume = async () => undefined; audio.suspend(); })`);
    await tab.until(`find('lark-drill').view.state === 'paused'`);
    await tab.show();
    // Which of the two it says depends on how long the machine left the page alone; the drill's own tests have the words.
    await tab.until(`/The page was hidden and could not be heard|Time was lost/.test(${NOTICE}?.textContent)`);
    expect(await tab.evaluate(`find('lark-drill').view.pausedBy`)).toBe('gap');
    expect((await tab.told()).records).toEqual([]);
    await tab.close();
  });

  it('a sound that stops in mid-drill is reported at once, and the report ends when it returns', async ({ expect }) => {
    const { page, faults, leave } = await arriveAtKit({
      before: () => {
        const made: AudioContext[] = [];
        const Real = window.AudioContext;
        class Kept extends Real {
          constructor() {
            super();
            made.push(this);
          }
        }
        Object.assign(window, { AudioContext: Kept, made });
      },
    });
    await begin(page, 6);
    await page.evaluate(async () => {
      for (const audio of (window as unknown as { made: AudioContext[] }).made) {
        // An output that will not come back yet, as when its server is gone.
        audio.resume = async () => undefined;
        await audio.suspend();
      }
    });
    await readsNotice(page, 'The sound has stopped. Follow the screen');
    await page.evaluate(() => {
      for (const audio of (window as unknown as { made: AudioContext[] }).made) {
        Reflect.deleteProperty(audio, 'resume');
      }
    });
    await notice(page).waitFor({ state: 'detached' });
    expect((await end(page)).records[0]?.reps).toMatchObject([{ outcome: 'held', heldMs: 6000 }]);
    expect(faults).toEqual([]);
    await leave();
  });

  it('a gamepad lets down, and unplugged in mid-hold it is reported on the display while the hold goes on', async ({
    expect,
  }) => {
    const { page, faults, leave } = await arriveAtKit({
      before: () => {
        const pad = { index: 0, connected: true, buttons: [{ pressed: false }, { pressed: false }] };
        Object.assign(window, { pad, pads: [pad] });
        const asked = { count: 0 };
        const getGamepads = () => {
          asked.count += 1;
          return (window as unknown as { pads: unknown[] }).pads;
        };
        Object.defineProperty(navigator, 'getGamepads', { value: getGamepads });
        Object.assign(window, { asked });
      },
    });
    /** A button that does not move until the page has looked at it twice. */
    const button = async (isDown: boolean) => {
      const before = await page.evaluate((pressed) => {
        const { pad, asked } = window as unknown as {
          pad: { buttons: { pressed: boolean }[] };
          asked: { count: number };
        };
        pad.buttons[1]!.pressed = pressed;
        return asked.count;
      }, isDown);
      await page.waitForFunction(
        (count) => (window as unknown as { asked: { count: number } }).asked.count >= count + 2,
        before,
      );
    };
    const press = async () => {
      await button(true);
      await button(false);
    };
    await learnLetDown(page, press, 'Gamepad button 2');
    await begin(page, 12, 2);
    await phase(page, 'Hold').waitFor();
    await press();
    // The let-down itself may be over before a busy machine looks.
    await page.locator('lark-glance').getByText('rep 2 of 2').first().waitFor();
    await phase(page, 'Hold').waitFor();
    await page.evaluate(() => Object.assign(window, { pads: [null] }));
    await readsNotice(page, 'The gamepad is gone. The drill goes on; use a key or the screen.');
    const { records } = await end(page);
    expect(records[0]?.reps[0]?.outcome).toBe('short');
    expect(records[0]?.reps[1]).toMatchObject({ outcome: 'held', heldMs: 12_000 });
    expect(faults).toEqual([]);
    await leave();
  });

  it('a microphone that is refused is reported on the display, and the drill goes on; a pedal says how it was', async ({
    expect,
  }) => {
    const { page, faults, leave } = await arriveAtKit();
    await page.getByLabel('Claps and loud clicks, by the microphone').check();
    await begin(page, 1);
    await readsNotice(
      page,
      'The microphone is not allowed or not there. Claps are not heard; use a key or the screen.',
    );
    expect((await end(page)).records[0]?.reps).toMatchObject([{ outcome: 'held', heldMs: 1000 }]);
    for (const key of ['ArrowUp', 'ArrowUp', 'PageDown', 'ArrowDown', 'PageDown']) {
      await page.keyboard.press(key);
      await page.waitForTimeout(350); // the same key within 300 ms would count as a bounce
    }
    await page.goto(`${inject('address')}#/journal`);
    await page.locator('lark-drill-entry summary').first().click();
    await page.getByText('effort 6 of 10').waitFor();
    expect(faults).toEqual([]);
    await leave();
  });

  it('without a sound device it says so, takes the whole screen, brightens the edge at cues and walks on', async ({
    expect,
  }) => {
    const { page, faults, leave } = await arriveAtKit({
      before: () => {
        for (const name of ['AudioContext', 'webkitAudioContext']) {
          Object.defineProperty(window, name, { value: undefined });
        }
        // What animates the edge, seen as it begins.
        const animated: string[] = [];
        const animate = Element.prototype.animate;
        Element.prototype.animate = function (...how) {
          animated.push(this.className);
          return animate.apply(this, how);
        };
        Object.assign(window, { animated });
      },
    });
    await page.goto(`${inject('address')}#/kit/display`);
    await page.getByLabel('Take the whole screen in a drill').check();
    await begin(page, 2);
    await page.waitForFunction(() => document.fullscreenElement !== null);
    await readsNotice(page, 'This device has no sound. Follow the screen.');
    const { records } = await end(page);
    expect(records[0]?.reps).toMatchObject([{ outcome: 'held', heldMs: 2000 }]);
    await page.waitForFunction(() => document.fullscreenElement === null);
    const animated = await page.evaluate(() => (window as unknown as { animated: string[] }).animated);
    // Ready, draw, hold, let down and done, at the least.
    expect(animated.filter((name) => name === 'edge').length).toBeGreaterThanOrEqual(5);
    expect(faults).toEqual([]);
    await leave();
  });
});
