import type { DrillRecord } from '@larkhold/engine';
import axe from 'axe-core';
import { expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import './index.ts';
import type { AfterDrill } from './drill-events.ts';
import type { LarkAfter } from './lark-after.ts';

const rep = { block: 0, set: 0, hand: 'usual', prescribedMs: 30_000 } as const;
const record: DrillRecord = {
  id: 'trial-drill',
  program: 'Morning holds',
  date: '2026-11-25',
  startedAt: '2026-11-25T06:30:00+01:00',
  endedAt: '2026-11-25T06:40:00+01:00',
  reps: [
    { ...rep, rep: 0, heldMs: 30_000, outcome: 'held' },
    { ...rep, rep: 1, heldMs: 28_000, outcome: 'short' },
    { ...rep, rep: 2, heldMs: 12_000, outcome: 'skipped' },
  ],
};
const unsureRecord: DrillRecord = {
  ...record,
  reps: record.reps.with(2, { ...rep, rep: 2, heldMs: 12_000, outcome: 'unsure' }),
};

async function afterOf(shown = record) {
  const after = document.createElement('lark-after');
  Object.assign(after, { record: shown, keysFrom: 'page' });
  document.body.append(after);
  await settled(after);
  const done: AfterDrill[] = [];
  after.addEventListener('lark-after-done', (event) => {
    if (event instanceof CustomEvent) done.push(event.detail);
  });
  return { after, done };
}

/** Buttons of the page, and of the answers in it. */
function button(after: LarkAfter, words: string, place = 0) {
  const answers = [...after.renderRoot.querySelectorAll('lark-rep-answer')].map(({ renderRoot }) => renderRoot);
  const all = [after.renderRoot, ...answers].flatMap((root) => [...root.querySelectorAll('button')]);
  return all.filter((one) => one.textContent?.trim() === words)[place]!;
}

/** Presses the stroke of a rep, and waits for its answer. */
async function openRep(after: LarkAfter, index: number) {
  const ribbon = after.renderRoot.querySelector('lark-hold-ribbon[picks]');
  ribbon?.dispatchEvent(new CustomEvent('lark-pick', { detail: { index } }));
  await settled(after);
}

async function settled(after: LarkAfter) {
  await after.updateComplete;
  for (const answer of after.renderRoot.querySelectorAll('lark-rep-answer')) await answer.updateComplete;
}

test('where clock and camera are apart, both are shown, and one press keeps either', async () => {
  const seen = (toMs: number) => ({ fromMs: 0, toMs, moved: ['elbow' as const], wholeMs: 9_000 });
  const held = { ...rep, heldMs: 30_000, outcome: 'held' as const };
  const reps = [
    { ...held, rep: 0, seen: { fromMs: 100, toMs: 30_100, moved: [], wholeMs: 30_000 } },
    { ...held, rep: 1, seen: seen(24_000) },
    { ...held, rep: 2, seen: seen(25_500) },
  ];
  const { after, done } = await afterOf({ ...record, reps });
  const answers = [...after.renderRoot.querySelectorAll('lark-rep-answer')];
  expect(answers).toHaveLength(2);
  expect(answers[0]!.renderRoot.textContent?.replace(/\s+/g, ' ')).toContain(
    'The clock has 30.0 s, the camera saw 24.0 s. The draw elbow moved down. Before that nothing moved for 9.0 s.'.replaceAll(
      '.0 s',
      ' s',
    ),
  );
  const press = async (words: RegExp) => {
    const all = answers.flatMap((answer) => [...answer.renderRoot.querySelectorAll('button')]);
    all.find((one) => words.test(one.textContent ?? ''))!.click();
    await settled(after);
  };
  await press(/camera’s 24/);
  await press(/clock’s 30/);
  button(after, 'Save').click();
  expect(done[0]?.reps).toEqual([reps[0], { ...reps[1], outcome: 'short', heldMs: 24_000 }, { ...held, rep: 2 }]);
  expect((await axe.run(after)).violations).toEqual([]);
});

test('saving gives what was said and the corrected reps', async () => {
  const { after, done } = await afterOf(unsureRecord);
  const radios = after.renderRoot.querySelectorAll<HTMLInputElement>('input[name=effort]');
  expect(radios).toHaveLength(11);
  radios[6]!.click();
  after.renderRoot.querySelectorAll<HTMLInputElement>('input[name=pain]')[0]!.click();
  const note = after.renderRoot.querySelector('textarea')!;
  note.value = ' Bow arm steady. ';
  note.dispatchEvent(new InputEvent('input'));
  // Only the unsure rep asks how it ended; the short one asks why.
  expect(after.renderRoot.querySelectorAll('lark-rep-answer')).toHaveLength(2);
  button(after, 'Held').click();
  await settled(after);
  expect(button(after, 'Held').getAttribute('aria-pressed')).toBe('true');
  button(after, 'Save').click();
  expect(done).toHaveLength(1);
  expect(done[0]).toMatchObject({ effort: 6, pain: false, note: 'Bow arm steady.' });
  expect(done[0]?.reps.map(({ outcome, heldMs }) => [outcome, heldMs])).toEqual([
    ['held', 30_000],
    ['short', 28_000],
    ['held', 30_000],
  ]);
});

test('nothing said is nothing given, and a correction taken back gives the logged time back', async () => {
  const { after, done } = await afterOf();
  await openRep(after, 1);
  button(after, 'Skipped').click();
  await settled(after);
  button(after, 'Short').click();
  await settled(after);
  button(after, 'Skip').click();
  expect(done).toEqual([{ reps: record.reps }]);
});

test('a short rep says why in one press, and takes it back in another', async () => {
  const { after, done } = await afterOf();
  button(after, 'Tired').click();
  await settled(after);
  expect(button(after, 'Tired').getAttribute('aria-pressed')).toBe('true');
  button(after, 'Form').click();
  await settled(after);
  button(after, 'Save').click();
  expect(done[0]?.reps.map(({ why }) => why)).toEqual([undefined, 'form', undefined]);
  button(after, 'Form').click();
  await settled(after);
  button(after, 'Save').click();
  expect(done[1]?.reps).toEqual(record.reps);
});

test('pain brings the advice', async () => {
  const { after } = await afterOf();
  const caution = () => after.renderRoot.querySelector('.caution')?.textContent;
  expect(caution()).toBe('');
  after.renderRoot.querySelectorAll<HTMLInputElement>('input[name=pain]')[1]!.click();
  await after.updateComplete;
  expect(caution()).toBe('Stop for today. If it stays, see a doctor or physiotherapist.');
});

test.each(['dark', 'light', 'contrast'] as const)('axe finds nothing, theme %s', async (theme) => {
  const { after } = await afterOf();
  after.theme = theme;
  await after.updateComplete;
  expect((await axe.run(after, { resultTypes: ['violations'] })).violations).toEqual([]);
});

let clockMs = 0;

function press(code: string, afterMs = 400) {
  clockMs += afterMs;
  vi.spyOn(performance, 'now').mockReturnValue(clockMs);
  window.dispatchEvent(new KeyboardEvent('keydown', { code, cancelable: true, bubbles: true }));
}

test('a pedal answers effort and pain, and saves', async () => {
  const { after, done } = await afterOf();
  // The first press is in the middle, then one up, one up, one down: 6.
  for (const code of ['ArrowUp', 'ArrowUp', 'ArrowUp', 'ArrowDown', 'PageDown', 'ArrowDown', 'PageDown']) press(code);
  await after.updateComplete;
  expect(done).toHaveLength(1);
  expect(done[0]).toMatchObject({ effort: 6, pain: false });
});

test('with a rep unsure a pedal is asked about it before saving: up is held, down is short, on leaves it unsure', async () => {
  const answers = [
    ['ArrowUp', 'held', 30_000],
    ['ArrowDown', 'short', 12_000],
    [undefined, 'unsure', 12_000],
  ] as const;
  for (const [code, outcome, heldMs] of answers) {
    const { after, done } = await afterOf(unsureRecord);
    for (const forward of ['PageDown', 'PageDown']) press(forward);
    await after.updateComplete;
    const asked = after.renderRoot.querySelector('li.asked')?.querySelector('lark-rep-answer');
    expect(asked?.place).toBe('Rep 3');
    if (code) press(code);
    expect(done).toEqual([]);
    press('PageDown');
    expect(done[0]?.reps[2]).toMatchObject({ outcome, heldMs });
    after.remove();
  }
});

// 300 ms: the product's own rule.
test('a pedal that bounces answers once', async () => {
  const { done } = await afterOf();
  press('PageDown');
  press('PageDown', 200);
  expect(done).toEqual([]);
  press('PageDown', 300);
  expect(done).toHaveLength(1);
});

test('a pedal with one key goes through and leaves all unsaid', async () => {
  const { done } = await afterOf();
  press('PageDown');
  press('PageDown');
  expect(done[0]).toEqual({ reps: record.reps });
});

test('a one and a zero soon after it are ten', async () => {
  const typed = async (...keys: [code: string, afterMs: number][]) => {
    const { after, done } = await afterOf();
    for (const [code, afterMs] of keys) press(code, afterMs);
    press('Enter');
    press('Enter');
    after.remove();
    return done[0]?.effort;
  };
  expect(await typed(['Digit1', 400], ['Digit0', 200])).toBe(10);
  expect(await typed(['Numpad1', 400], ['Numpad0', 200])).toBe(10);
  expect(await typed(['Digit1', 400], ['Digit0', 3000])).toBe(0);
  expect(await typed(['Digit4', 400], ['Digit0', 200])).toBe(0);
  expect(await typed(['Digit1', 400])).toBe(1);
});

test('a keyboard alone answers all of it', async () => {
  const { after, done } = await afterOf(unsureRecord);
  const focused = () => {
    const outer = after.shadowRoot?.activeElement;
    return outer?.shadowRoot?.activeElement ?? outer;
  };
  const tabTo = async (words: string) => {
    for (let tries = 0; tries < 30; tries += 1) {
      await userEvent.tab();
      const answer = after.shadowRoot?.activeElement?.closest('lark-rep-answer')?.place ?? '';
      const group = `${answer} ${focused()?.closest('fieldset, .note')?.textContent ?? ''}`;
      if (`${group} ${focused()?.textContent}`.includes(words)) return;
    }
    throw new Error(`no way by Tab to ${words}`);
  };
  // The test's own frame is around the page; a keyboard at home is in the page from the beginning.
  await userEvent.click(after.renderRoot.querySelector('h2')!);
  await tabTo('Effort');
  await userEvent.keyboard('{ArrowRight}{ArrowRight}');
  await tabTo('Any pain?');
  await userEvent.keyboard(' ');
  await tabTo('Rep 3');
  await userEvent.keyboard('{Enter}');
  await tabTo('Note');
  await userEvent.keyboard('Wind from the left 10');
  while (focused()?.textContent?.trim() !== 'Save') await userEvent.tab();
  await userEvent.keyboard('{Enter}');
  expect(done).toHaveLength(1);
  expect(done[0]).toMatchObject({ effort: 2, pain: false, note: 'Wind from the left 10' });
  expect(done[0]?.reps[2]).toMatchObject({ outcome: 'held', heldMs: 30_000 });
});

test('digits set the effort, and a note keeps its own keys', async () => {
  const { after, done } = await afterOf();
  press('Digit8');
  after.renderRoot
    .querySelector('textarea')!
    .dispatchEvent(new KeyboardEvent('keydown', { code: 'Digit2', bubbles: true, composed: true }));
  press('Enter');
  press('Enter');
  expect(done[0]).toMatchObject({ effort: 8 });
});
