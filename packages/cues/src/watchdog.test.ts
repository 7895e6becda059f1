import { describe, expect, it } from 'vitest';
import { createWatchdog } from './watchdog.ts';

const running = { state: 'running' as const, isArmed: true };

describe('createWatchdog', () => {
  it('is content while the audio clock goes on', () => {
    const watchdog = createWatchdog();
    for (let pageMs = 0; pageMs < 5000; pageMs += 200)
      watchdog.look({ ...running, pageMs, audioSeconds: pageMs / 1000 });
    expect(watchdog.trouble).toBeUndefined();
    expect(watchdog.isStill).toBe(false);
  });

  it('says that sound is refused before it ever ran, and stalled after', () => {
    const watchdog = createWatchdog();
    watchdog.look({ state: 'suspended', isArmed: true, pageMs: 0, audioSeconds: 0 });
    expect(watchdog.trouble?.kind).toBe('refused');
    watchdog.look({ ...running, pageMs: 100, audioSeconds: 0.1 });
    watchdog.look({ ...running, pageMs: 300, audioSeconds: 0.3 });
    expect(watchdog.trouble).toBeUndefined();
    watchdog.look({ state: 'suspended', isArmed: true, pageMs: 500, audioSeconds: 0.3 });
    expect(watchdog.trouble?.kind).toBe('stalled');
  });

  it('notices a clock that has stopped while it says it runs, and its return', () => {
    const watchdog = createWatchdog();
    const told: (string | undefined)[] = [];
    watchdog.onTrouble((trouble) => told.push(trouble?.kind));
    watchdog.look({ ...running, pageMs: 0, audioSeconds: 1 });
    watchdog.look({ ...running, pageMs: 200, audioSeconds: 1.2 });
    watchdog.look({ ...running, pageMs: 400, audioSeconds: 1.2 });
    expect(told).toEqual([]);
    watchdog.look({ ...running, pageMs: 600, audioSeconds: 1.2 });
    expect(told).toEqual(['stalled']);
    watchdog.look({ ...running, pageMs: 800, audioSeconds: 1.4 });
    expect(told).toEqual(['stalled', undefined]);
  });

  it('keeps quiet about a still clock while no cue is due', () => {
    const watchdog = createWatchdog();
    watchdog.look({ state: 'suspended', isArmed: false, pageMs: 0, audioSeconds: 0 });
    expect(watchdog.trouble).toBeUndefined();
    expect(watchdog.isStill).toBe(true);
  });

  it('says that a device has no sound', () => {
    const watchdog = createWatchdog();
    watchdog.unlocked(false, false);
    expect(watchdog.trouble?.kind).toBe('none');
  });
});
