const words: Readonly<Record<string, string>> = {
  ArrowUp: '↑',
  ArrowDown: '↓',
  ArrowLeft: '←',
  ArrowRight: '→',
  PageUp: 'Page up',
  PageDown: 'Page down',
  Escape: 'Esc',
};

/**
 * A key as it is printed on a keyboard.
 * @param code `KeyboardEvent.code`
 * @returns 'Space', 'P', '↓'
 */
export function keyWords(code: string): string {
  return words[code] ?? code.replace(/^(Key|Digit)/, '');
}
