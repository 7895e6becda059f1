import { styleText } from 'node:util';

/** Type for a terminal. */
export interface Style {
  strong(text: string): string;
}

/**
 * Styles text where a person looks at a terminal, and leaves it plain elsewhere.
 * @param isTerminal whether to
 * @returns the style
 */
export function createStyle(isTerminal: boolean): Style {
  return { strong: (text) => (isTerminal ? styleText('bold', text, { validateStream: false }) : text) };
}
