import { expect, test, vi } from 'vitest';
import { keepScreenOn } from './wake-lock.ts';

/** A device that gives out locks, and takes them all when the page is hidden, as the Screen Wake Lock specification says. */
function deviceOf(give: (count: number) => Promise<void> = () => Promise.resolve()) {
  const locks: { isReleased: boolean }[] = [];
  let asked = 0;
  const visibility = vi.spyOn(document, 'visibilityState', 'get').mockReturnValue('visible');
  const request = async () => {
    asked += 1;
    await give(asked);
    const lock = { isReleased: false };
    locks.push(lock);
    return {
      release: async () => {
        lock.isReleased = true;
      },
    };
  };
  vi.spyOn(navigator, 'wakeLock', 'get').mockReturnValue({ request } as unknown as WakeLock);
  const turn = (state: DocumentVisibilityState) => {
    visibility.mockReturnValue(state);
    if (state === 'hidden') for (const lock of locks) lock.isReleased = true;
    document.dispatchEvent(new Event('visibilitychange'));
  };
  return { locks, turn, held: () => locks.filter((lock) => !lock.isReleased).length };
}

test('the screen is kept on, kept on again when the page is back, and let go at the end', async () => {
  const { turn, held, locks } = deviceOf();
  const troubles: string[] = [];
  const end = keepScreenOn((message) => troubles.push(message));
  await expect.poll(held).toBe(1);
  turn('hidden');
  expect(held()).toBe(0);
  turn('visible');
  await expect.poll(held).toBe(1);
  end();
  await expect.poll(held).toBe(0);
  turn('hidden');
  turn('visible');
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(locks.length).toBe(2);
  expect(troubles).toEqual([]);
});

test('a lock that comes after the end is let go at once', async () => {
  let give = (): void => undefined;
  const { locks, held } = deviceOf(
    () =>
      new Promise((resolve) => {
        give = resolve;
      }),
  );
  const end = keepScreenOn(() => undefined);
  end();
  give();
  await expect.poll(() => locks.length).toBe(1);
  await expect.poll(held).toBe(0);
});

test('a refusal is reported once, and the lock is requested again when the page is back', async () => {
  const { turn, held } = deviceOf((count) =>
    count < 3 ? Promise.reject(new Error('battery low')) : Promise.resolve(),
  );
  const troubles: string[] = [];
  const end = keepScreenOn((message) => troubles.push(message));
  await expect.poll(() => troubles.length).toBe(1);
  turn('hidden');
  turn('visible');
  turn('hidden');
  turn('visible');
  await expect.poll(held).toBe(1);
  expect(troubles).toEqual(['This device may switch the screen off. Set it to stay on, or follow the sound.']);
  end();
});
