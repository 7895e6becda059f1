import { expect, test } from 'vitest';
import './index.ts';
import { defaultRunnerSettings } from './runner-settings.ts';
import { trialEnvironment, trialPrescription } from './trial-environment.ts';

const frames = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));

test('a warning that itself makes the number smaller is given once, and never measured round and round', async () => {
  document.documentElement.style.fontSize = '32px'; // text at 200 %: the warning takes much room
  const drill = document.createElement('lark-drill');
  drill.style.cssText = 'display: grid; width: 390px; height: 760px';
  let updates = 0;
  const update = drill.requestUpdate.bind(drill);
  // A circle of updates never gives the page back; it is broken off here so that it can be seen.
  drill.requestUpdate = (...args: Parameters<typeof update>) => {
    updates += 1;
    if (updates < 40) update(...args);
  };
  const settingsAt = (distanceM: number) => ({ ...defaultRunnerSettings, viewing: { distanceM } });
  Object.assign(drill, {
    prescription: trialPrescription(),
    environment: trialEnvironment(),
    settings: settingsAt(0.5),
  });
  document.body.append(drill);
  await frames();
  for (let distanceM = 0.5; distanceM < 12; distanceM += 0.25) {
    updates = 0;
    drill.settings = settingsAt(distanceM);
    await frames();
    expect({ distanceM, isCircle: updates > 10 }).toEqual({ distanceM, isCircle: false });
  }
});
