import { describe, expect, it } from 'vitest';
import { deviceKitNames, deviceKitOf, isAsNew, readDeviceKit } from './device-kit.ts';
import { createKit, kitSchema } from './kit.ts';
import { ownKitNames } from './own-kit.ts';

describe('what a device may take over of another', () => {
  it('is no part of what is the archer’s, and each value of the kit is the one, the other, or stays', () => {
    const stays = ['callAnswers', 'camera', 'pixelMm', 'backup'];
    const all = [...deviceKitNames, ...ownKitNames, ...stays];
    expect([...all].sort()).toEqual(Object.keys(kitSchema.shape).sort());
    expect(new Set(all).size).toBe(all.length);
  });

  it('goes there and back whole, and holds nothing of lines that were allowed at full draw', () => {
    const kit = {
      ...createKit(),
      soundLevel: 0.2,
      language: 'de' as const,
      keys: { ...createKit().keys, begin: ['F13'] },
      callAnswers: [{ programId: 'mine', allowed: ['Strong back'], silenced: [] }],
    };
    const sent = JSON.parse(JSON.stringify(deviceKitOf(kit)));
    expect(JSON.stringify(sent)).not.toContain('Strong back');
    expect(readDeviceKit(sent)).toEqual(deviceKitOf(kit));
  });

  it('is read value by value: bad ones are left out, and what only a newer app knows does not spoil the rest', () => {
    expect(readDeviceKit({ soundLevel: 7, voice: 'words', bow: 'longbow', callAnswers: [], wings: 2 })).toEqual({
      voice: 'words',
    });
    const keys = { ...createKit().keys, begin: ['F13'], whistle: ['KeyW'] };
    expect(readDeviceKit({ keys, listens: { microphone: true, knocks: true } })).toEqual({
      keys: { ...createKit().keys, begin: ['F13'] },
      listens: { gamepad: true, headset: false, microphone: true },
    });
    for (const odd of [
      undefined,
      null,
      'keys',
      7,
      [],
      { keys: null, viewing: [] },
      { __proto__: { voice: 'words' } },
    ]) {
      expect(readDeviceKit(odd)).toEqual({});
    }
  });

  it('is as new until the archer has changed any of it; a bow and a week’s first day are not of it', () => {
    expect(isAsNew({ ...createKit(), bow: 'longbow', weekStart: 'sunday' })).toBe(true);
    expect(isAsNew({ ...createKit(), quiet: true })).toBe(false);
  });
});
