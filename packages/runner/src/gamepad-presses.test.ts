import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { gamepadPresses, newPresses } from './gamepad-presses.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const pad = (...down: number[]): Gamepad => ({
  index: 0,
  id: 'pad',
  connected: true,
  mapping: 'standard',
  timestamp: 0,
  axes: [],
  buttons: Array.from({ length: 4 }, (_, index) => ({ pressed: down.includes(index), touched: false, value: 0 })),
  vibrationActuator: {} as GamepadHapticActuator,
});

test('a button is a press when it goes down, not while it stays down', () => {
  expect(newPresses(new Set(), new Set([2]))).toEqual(['Gamepad:2']);
  expect(newPresses(new Set([2]), new Set([2]))).toEqual([]);
  expect(newPresses(undefined, new Set([2]))).toEqual([]);
});

test('a gamepad that is pulled out is reported once, and heard again when it is back', () => {
  let now: (Gamepad | null)[] = [pad()];
  const presses: string[] = [];
  const troubles: (string | undefined)[] = [];
  const end = gamepadPresses(() => now).listen(
    (code) => presses.push(code),
    (message) => troubles.push(message),
  );
  const show = (...next: (Gamepad | null)[]) => {
    now = next;
    vi.advanceTimersByTime(50);
  };
  show(pad(1));
  show(pad(1));
  expect(presses).toEqual(['Gamepad:1']);
  show(null);
  expect(troubles).toEqual(['The gamepad is gone. The drill goes on; use a key or the screen.']);
  show(pad());
  expect(troubles.slice(1)).toEqual([undefined]);
  show(pad(0));
  expect(presses).toEqual(['Gamepad:1', 'Gamepad:0']);
  end();
  show(pad(3));
  expect(presses.length).toBe(2);
});
