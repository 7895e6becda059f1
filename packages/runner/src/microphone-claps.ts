import { say } from '@larkhold/words';
import { createClapDetector } from './clap-detector.ts';
import type { PressSource } from './press-source.ts';
import { createSampleClock } from './sample-clock.ts';

/**
 * Claps and loud clicks heard by the microphone. The sound is judged on this device as it comes in; nothing of it is stored or sent.
 * @returns a source of the code 'Clap'; it asks for the microphone when somebody begins to listen, and tells when it is refused or gone,
 * and when it begins to hear
 */
export function microphoneClaps(): PressSource {
  return {
    listen(onPress, onTrouble) {
      let isOver = false;
      let letGo = () => undefined as undefined;
      open(
        () => isOver,
        (atMs) => onPress('Clap', atMs),
        () => onTrouble?.(say('drill.microphoneGone')),
      ).then(
        (close) => {
          letGo = close;
          if (isOver) close();
          else onTrouble?.(undefined);
        },
        () => {
          if (!isOver) onTrouble?.(say('drill.noMicrophone'));
        },
      );
      return () => {
        isOver = true;
        letGo();
      };
    },
  };
}

async function open(
  isOver: () => boolean,
  onClap: (atMs: number) => void,
  onGone: () => void,
): Promise<() => undefined> {
  // What cleans up voices would take a clap for noise.
  const stream = await navigator.mediaDevices.getUserMedia({
    audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false },
  });
  const audio = new AudioContext();
  const close = (): undefined => {
    for (const track of stream.getTracks()) track.stop();
    if (audio.state !== 'closed') void audio.close();
  };
  try {
    await audio.audioWorklet.addModule(new URL('../worklet/forward-samples.js', import.meta.url));
    await audio.resume();
  } catch (error) {
    close();
    throw error;
  }
  const detector = createClapDetector(audio.sampleRate);
  const clock = createSampleClock(audio.sampleRate);
  const forward = new AudioWorkletNode(audio, 'forward-samples', { numberOfOutputs: 0, channelCount: 1 });
  forward.port.onmessage = ({ data }) => {
    if (isOver() || !(data instanceof Float32Array)) return;
    clock.heard(data.length, performance.now());
    for (const seconds of detector.hear(data)) onClap(clock.atMs(seconds));
  };
  audio.createMediaStreamSource(stream).connect(forward);
  stream.getAudioTracks()[0]?.addEventListener('ended', () => {
    if (!isOver()) onGone();
  });
  return close;
}
