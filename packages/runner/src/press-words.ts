const WORDS: Readonly<Record<string, string>> = {
  Space: 'Space bar',
  Enter: 'Enter',
  NumpadEnter: 'Enter, number pad',
  Escape: 'Escape',
  PageUp: 'Page up',
  PageDown: 'Page down',
  ArrowUp: 'Arrow up',
  ArrowDown: 'Arrow down',
  ArrowLeft: 'Arrow left',
  ArrowRight: 'Arrow right',
  Backspace: 'Backspace',
  Tab: 'Tab',
  Clap: 'Clap',
  'Headset:playpause': 'Headset, play or pause',
  'Headset:next': 'Headset, next',
  'Headset:previous': 'Headset, previous',
};

/**
 * A press in words, as the archer knows it.
 * @param code a `KeyboardEvent.code`, or a code of a press source
 * @returns for example 'Page down', 'Key L' or 'Gamepad button 1'; the code itself where it has no better name
 */
export function pressWords(code: string): string {
  const gamepad = /^Gamepad:(\d+)$/.exec(code);
  if (gamepad) return `Gamepad button ${Number(gamepad[1]) + 1}`;
  const plain = /^(Key|Digit|Numpad)([A-Z0-9])$/.exec(code);
  if (plain) return `Key ${plain[2]}${plain[1] === 'Numpad' ? ', number pad' : ''}`;
  return WORDS[code] ?? code;
}
