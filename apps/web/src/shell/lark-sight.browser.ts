import type { SessionSnapshot } from '@larkhold/engine';
import '@larkhold/runner';
import { afterEach, expect, test, vi } from 'vitest';
import './lark-sight.ts';
import { movingCamera, stopCameras } from './trial-camera.ts';

// A canvas is the camera; the drill around it says in which step it is.

afterEach(stopCameras);

test('says in the hold that the camera is gone; the drill hears of no let-down and goes on', async () => {
  const stream = movingCamera();
  vi.spyOn(navigator.mediaDevices, 'getUserMedia').mockResolvedValue(stream);
  const drill = document.createElement('lark-drill');
  const observed = vi.spyOn(drill, 'observe');
  const sight = document.createElement('lark-sight');
  sight.replayOnly = true;
  drill.append(sight);
  document.body.append(drill);
  await vi.waitFor(() => expect(sight.renderRoot.querySelector('video')).not.toBeNull(), { timeout: 10_000 });
  for (const track of stream.getTracks()) {
    track.stop();
    track.dispatchEvent(new Event('ended'));
  }
  await vi.waitFor(() =>
    expect(sight.renderRoot.textContent).toContain('The camera is gone. The drill goes by the clock.'),
  );
  expect(sight.renderRoot.querySelector('video')).toBeNull();
  await new Promise((resolve) => setTimeout(resolve, 1_200));
  expect(observed).not.toHaveBeenCalled();
});

test('plays the last hold back in the rest on any device: without the model, and gone with the next draw', async () => {
  vi.spyOn(navigator.mediaDevices, 'getUserMedia').mockResolvedValue(movingCamera());
  const worker = vi.fn();
  vi.stubGlobal('Worker', worker);
  const drill = document.createElement('lark-drill');
  const sight = document.createElement('lark-sight');
  sight.replayOnly = true;
  sight.slot = 'sight';
  drill.append(sight);
  document.body.append(drill);
  const stepIs = (kind: string) =>
    drill.dispatchEvent(
      new CustomEvent('lark-change', {
        detail: { snapshot: { walk: { step: { kind } } } as unknown as SessionSnapshot },
      }),
    );
  const mirror = () => sight.renderRoot.querySelector('lark-second-mirror');
  await vi.waitFor(() => expect(sight.renderRoot.querySelector('video')).not.toBeNull(), { timeout: 10_000 });
  expect(sight.renderRoot.textContent).toContain('The camera is on');
  stepIs('draw');
  await new Promise((resolve) => setTimeout(resolve, 1_500));
  stepIs('hold');
  stepIs('rest');
  await vi.waitFor(() => expect(mirror()).not.toBeNull(), { timeout: 10_000 });
  const rates: number[] = [];
  mirror()?.addEventListener('lark-replay', (event) => rates.push((event as CustomEvent).detail.rate));
  await vi.waitFor(() => expect(rates).toContain(0.5), { timeout: 20_000 });
  stepIs('draw');
  await sight.updateComplete;
  expect(mirror()).toBeNull();
  drill.dispatchEvent(new CustomEvent('lark-end', { detail: {} }));
  await sight.updateComplete;
  expect(sight.renderRoot.querySelector('video')).toBeNull();
  expect(worker).not.toHaveBeenCalled();
  vi.unstubAllGlobals();
});
