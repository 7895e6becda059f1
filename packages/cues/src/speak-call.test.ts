import { afterEach, describe, expect, it, vi } from 'vitest';
import { canSpeak, speakCall } from './speak-call.ts';

interface Voice {
  name: string;
  lang: string;
  localService: boolean;
  default: boolean;
}
const voice = (name: string, lang: string, more: Partial<Voice> = {}): Voice => ({
  ...{ name, lang, localService: true, default: false },
  ...more,
});

function device(voices: Voice[]) {
  const spoken: { text: string; lang: string; volume: number; voice?: Voice }[] = [];
  vi.stubGlobal('speechSynthesis', {
    getVoices: () => voices,
    speak: (one: (typeof spoken)[number]) => spoken.push(one),
  });
  vi.stubGlobal(
    'SpeechSynthesisUtterance',
    class {
      lang = '';
      volume = 1;
      constructor(readonly text: string) {}
    },
  );
  return spoken;
}

afterEach(() => vi.unstubAllGlobals());

describe('the device’s own voice', () => {
  it('is one that is on the device, with its language set', () => {
    const spoken = device([
      voice('far away', 'en-GB', { localService: false, default: true }),
      voice('Anna', 'de-DE', { default: true }),
      voice('Daniel', 'en_GB'),
    ]);
    expect(speakCall('Reach', 'en', 0.4)).toBe(true);
    expect(spoken).toMatchObject([{ text: 'Reach', lang: 'en_GB', volume: 0.4, voice: { name: 'Daniel' } }]);
  });

  it('is silent rather than to send the words away or to read them in another language', () => {
    const spoken = device([
      voice('far away', 'en-GB', { localService: false }),
      voice('Anna', 'de-DE', { default: true }),
    ]);
    expect(canSpeak('en')).toBe(false);
    expect(speakCall('Reach', 'en', 1)).toBe(false);
    expect(spoken).toEqual([]);
  });

  it('takes the voice of the very region, then the usual one of the language', () => {
    const spoken = device([voice('A', 'en-US'), voice('B', 'en-IN', { default: true }), voice('C', 'en-GB')]);
    speakCall('Reach', 'en-GB', 1);
    speakCall('Reach', 'en', 1);
    expect(spoken.map((one) => one.voice?.name)).toEqual(['C', 'B']);
  });

  it('is silent where the browser has no voices', () => {
    vi.stubGlobal('speechSynthesis', undefined);
    expect(speakCall('Reach', 'en', 1)).toBe(false);
  });
});
