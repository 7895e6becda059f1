import { expect, it } from 'vitest';
import { askForPersistence } from './persistence.ts';

const yes = async (): Promise<boolean> => true;
const no = async (): Promise<boolean> => false;

it('asks once, and says what was answered', async () => {
  let asked = 0;
  const persist = async (): Promise<boolean> => {
    asked += 1;
    return true;
  };
  expect(await askForPersistence({ persisted: yes, persist })).toBe('kept');
  expect(asked).toBe(0);
  expect(await askForPersistence({ persisted: no, persist })).toBe('kept');
  expect(asked).toBe(1);
  expect(await askForPersistence({ persisted: no, persist: no })).toBe('may be cleared');
});

it('takes a browser without it, or one that throws, as unknown', async () => {
  const throws = async (): Promise<boolean> => {
    throw new TypeError('not secure');
  };
  expect(await askForPersistence(undefined)).toBe('unknown');
  expect(await askForPersistence({ persisted: throws, persist: no })).toBe('unknown');
});
