import type { Words } from './create-words.ts';
import type { MessageKey } from './message-key.ts';
import { presentWords } from './present-words.ts';

/** Codes that have a name of their own; a key of the same name says it. */
const NAMED: Readonly<Record<string, Extract<MessageKey, `press.${string}`>>> = {
  Space: 'press.Space',
  Enter: 'press.Enter',
  NumpadEnter: 'press.NumpadEnter',
  Escape: 'press.Escape',
  PageUp: 'press.PageUp',
  PageDown: 'press.PageDown',
  ArrowUp: 'press.ArrowUp',
  ArrowDown: 'press.ArrowDown',
  ArrowLeft: 'press.ArrowLeft',
  ArrowRight: 'press.ArrowRight',
  Backspace: 'press.Backspace',
  Tab: 'press.Tab',
  Clap: 'press.Clap',
  'Headset:playpause': 'press.HeadsetPlay',
  'Headset:next': 'press.HeadsetNext',
  'Headset:previous': 'press.HeadsetPrevious',
};

/**
 * A press in words, as the archer knows it.
 * @param code a `KeyboardEvent.code`, or a code of a press source
 * @param words the language
 * @returns for example 'Page down', 'Key L' or 'Gamepad button 1'; the code itself where it has no better name
 */
export function pressWords(code: string, words: Words = presentWords()): string {
  const gamepad = /^Gamepad:(\d+)$/.exec(code);
  if (gamepad) return words.say('press.gamepad', { button: Number(gamepad[1]) + 1 });
  const [, kind, key = ''] = /^(Key|Digit|Numpad)([A-Z0-9])$/.exec(code) ?? [];
  if (kind !== undefined) return words.say(kind === 'Numpad' ? 'press.keyOnPad' : 'press.key', { key });
  const named = Object.hasOwn(NAMED, code) ? NAMED[code] : undefined;
  return named === undefined ? code : (words.say as (key: MessageKey) => string)(named);
}
