import type { ReactiveController } from 'lit';
import { expect, test } from 'vitest';
import { GamepadToBegin } from './gamepad-to-begin.ts';

test('the learned button begins while something can begin, and the gamepad is let go after', () => {
  let codes: string[] = [];
  let press: ((code: string) => void) | undefined;
  let begun = 0;
  const host = {
    addController: (_: ReactiveController) => undefined,
    removeController: () => undefined,
    requestUpdate: () => undefined,
    updateComplete: Promise.resolve(true),
  };
  const source = {
    listen(onPress: (code: string) => void) {
      press = onPress;
      return () => {
        press = undefined;
      };
    },
  };
  const controller = new GamepadToBegin(
    host,
    () => codes,
    () => {
      begun += 1;
    },
    source,
  );
  codes = ['Space'];
  controller.hostUpdated();
  expect(press).toBeUndefined();
  codes = ['Space', 'Gamepad:0'];
  controller.hostUpdated();
  press?.('Gamepad:3');
  press?.('Gamepad:0');
  expect(begun).toBe(1);
  codes = [];
  controller.hostUpdated();
  expect(press).toBeUndefined();
});
