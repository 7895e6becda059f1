import { payloadIn } from './program-link.ts';

/** What was pasted or dropped as text: a link to open, a program file's text, or nothing that is ours. */
export type PastedProgram = { kind: 'link'; payload: string } | { kind: 'text'; text: string } | { kind: 'nothing' };

/**
 * Looks at pasted text. It is not read yet: only told apart from text that was never meant for the rack.
 * @param text any text
 * @returns what it is
 */
export function pastedProgram(text: string): PastedProgram {
  const payload = payloadIn(text);
  if (payload !== undefined) return { kind: 'link', payload };
  return /^\uFEFF?\s*\{/.test(text) ? { kind: 'text', text } : { kind: 'nothing' };
}

/**
 * Whether a paste or a drop is meant for a field and not for the rack.
 * @param event the paste or the drop
 * @returns true when something that is typed in has it
 */
export function isForField(event: Event): boolean {
  const [first] = event.composedPath();
  return first instanceof HTMLInputElement || first instanceof HTMLTextAreaElement;
}
