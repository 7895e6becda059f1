import { afterEach, expect, test, vi } from 'vitest';
import { openTrialApp } from '../shell/files/trial-app.ts';
import { movingCamera, stopCameras } from '../shell/trial-camera.ts';
import './lark-kit-camera.ts';

// A canvas is the camera.

afterEach(stopCameras);

async function show() {
  const element = document.createElement('lark-kit-camera');
  document.body.append(element);
  const { state } = await openTrialApp(element);
  // The picture alone, so that no model is loaded here.
  await state.app?.act.changeKit({ camera: { ...state.app.view.kit.camera, on: true, replayOnly: true } });
  const root = element.renderRoot as ShadowRoot;
  const button = (words: string) =>
    [...root.querySelectorAll('button')].find((one) => one.textContent?.includes(words));
  await vi.waitFor(() => expect(button('Set up the camera')).toBeDefined());
  return { root, button };
}

const PATIENCE = { timeout: 10_000 };

test('the set-up has the page for itself; once a camera is open the others can be chosen, and the chosen one is opened', async () => {
  let isAllowed = false;
  const asked = vi.spyOn(navigator.mediaDevices, 'getUserMedia').mockImplementation(async () => {
    isAllowed = true;
    return movingCamera();
  });
  // A browser names no camera before one was allowed.
  vi.spyOn(navigator.mediaDevices, 'enumerateDevices').mockImplementation(async () =>
    ['desk', 'stand'].map(
      (label) => ({ kind: 'videoinput', deviceId: isAllowed ? label : '', label }) as MediaDeviceInfo,
    ),
  );
  const { root, button } = await show();
  button('Set up the camera')?.click();
  await vi.waitFor(() => expect(root.querySelector('select')).not.toBeNull(), PATIENCE);
  expect(root.querySelectorAll('input')).toHaveLength(0);
  const select = root.querySelector('select') as HTMLSelectElement;
  expect([...select.options].map(({ textContent }) => textContent?.trim())).toEqual(['The usual one', 'desk', 'stand']);
  expect(asked.mock.calls.map(([wanted]) => wanted?.video)).not.toContainEqual(
    expect.objectContaining({ deviceId: { ideal: 'stand' } }),
  );
  select.value = 'stand';
  select.dispatchEvent(new Event('change'));
  await vi.waitFor(
    () => expect(asked.mock.lastCall?.[0]?.video).toMatchObject({ deviceId: { ideal: 'stand' } }),
    PATIENCE,
  );
  button('Done')?.click();
  await vi.waitFor(() => expect(root.activeElement?.textContent).toContain('Set up the camera'), PATIENCE);
  expect(root.querySelectorAll('input').length).toBeGreaterThan(1);
});

test('a set-up that is refused says so at once, at the head of the page', async () => {
  vi.spyOn(navigator.mediaDevices, 'getUserMedia').mockRejectedValue(new DOMException('no', 'NotAllowedError'));
  const { root, button } = await show();
  button('Set up the camera')?.click();
  const words = () => root.querySelector('lark-sight-setup')?.renderRoot.textContent ?? '';
  await vi.waitFor(() => expect(words()).toContain('The camera is not allowed here.'), PATIENCE);
  expect(root.querySelectorAll('input')).toHaveLength(0);
});
