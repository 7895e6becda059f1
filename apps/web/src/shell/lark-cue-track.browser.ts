import { builtInPrograms, layOut, type Prescription, prescribe } from '@larkhold/engine';
import { createKit } from '@larkhold/store';
import axe from 'axe-core';
import { expect, test } from 'vitest';
import type { App } from './app-context.ts';
import './lark-cue-track.ts';

const [program] = builtInPrograms;
const today: Prescription = prescribe({ program: program!, records: [], today: '2026-11-25' });

async function trackOf(prescription = today) {
  const element = document.createElement('lark-cue-track');
  const saved: { name: string; file: Blob }[] = [];
  Object.assign(element, {
    prescription,
    programTitle: 'Club starter',
    app: { view: { kit: { ...createKit(), voice: 'tones' } } } as unknown as App,
    save: (name: string, file: Blob) => saved.push({ name, file }),
  });
  document.body.append(element);
  await element.updateComplete;
  const root = element.renderRoot as ShadowRoot;
  root.querySelector('details')!.open = true;
  const press = (words: string) =>
    [...root.querySelectorAll('button')].find((button) => button.textContent?.includes(words))!.click();
  const choose = async (place: number) => {
    const select = root.querySelector('select')!;
    select.selectedIndex = place;
    select.dispatchEvent(new Event('change'));
    await element.updateComplete;
  };
  return { element, root, saved, press, choose, status: () => root.querySelector('[role=status]')?.textContent ?? '' };
}

test('today is saved as WAV of the right length, and as a WebM many times smaller', async () => {
  const { saved, press, choose, status } = await trackOf();
  await choose(1);
  press('Make the file');
  await expect.poll(() => saved.length, { timeout: 30_000 }).toBe(1);
  expect(saved[0]?.name).toBe('club-starter-2026-11-25.wav');
  // RIFF WAVE: 44 bytes of header, then 16 bits at 24 kHz; three seconds for the last sound to end.
  expect(saved[0]?.file.size).toBe(44 + (layOut(today).durationMs / 1000 + 3) * 24_000 * 2);
  await expect.poll(status).toContain('Saved: club-starter-2026-11-25.wav');
  await choose(0);
  press('Make the file');
  await expect.poll(() => saved.length, { timeout: 30_000 }).toBe(2);
  expect(saved[1]?.file.type).toContain('opus');
  expect(saved[1]!.file.size * 4).toBeLessThan(saved[0]!.file.size);
});

test('it tells how far it is, and cancel saves nothing', async () => {
  const long: Prescription = { ...today, blocks: today.blocks.map((block) => ({ ...block, sets: 12, reps: 40 })) };
  const { element, root, saved, press, status } = await trackOf(long);
  press('Make the file');
  await expect.poll(() => root.querySelector('progress')?.value ?? 0, { interval: 5 }).toBeGreaterThan(0);
  expect((await axe.run(element, { resultTypes: ['violations'] })).violations).toEqual([]);
  press('Cancel');
  await expect.poll(status).toBe('Cancelled. Nothing was saved.');
  expect(root.querySelector('progress')).toBeNull();
  expect(saved).toEqual([]);
});

test('it stops by itself when it is removed', async () => {
  const { element, saved, press } = await trackOf();
  press('Make the file');
  element.remove();
  await new Promise((resolve) => setTimeout(resolve, 1000));
  expect(saved).toEqual([]);
});
