import { isSpoken } from './language.ts';

/**
 * The locale to speak before anybody has chosen one.
 * @returns BCP 47 or what the surroundings give in its place: the language of the page where Larkhold speaks it, in the reader's own kind; else
 * the browser's or the system's; '' where nothing is known
 */
export function localeHere(): string {
  const { document, navigator } = globalThis as { document?: Document; navigator?: Navigator };
  const own = navigator?.language ?? '';
  const page = document?.documentElement?.lang ?? '';
  const speaksPage = isSpoken(page) && !own.startsWith(page);
  return speaksPage ? page : own;
}
