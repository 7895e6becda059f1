/**
 * Time left in large digits: whole seconds, counted down to 1.
 * @param msLeft milliseconds left; below 0 counts as 0
 * @returns '28' under a hundred seconds, '1:40' from there on
 */
export function digitsOf(msLeft: number): string {
  // A hair over a whole second is that second: 30000.0001 ms is 30 s.
  const seconds = Math.max(0, Math.ceil(msLeft / 1000 - 1e-6));
  return seconds < 100 ? String(seconds) : minutesAndSeconds(seconds);
}

/**
 * A longer time in small print.
 * @param spanMs milliseconds
 * @returns '0:45', '12:30' or '1:02:30'
 */
export function clockWords(spanMs: number): string {
  const seconds = Math.max(0, Math.ceil(spanMs / 1000 - 1e-6));
  if (seconds < 3600) return minutesAndSeconds(seconds);
  const hours = Math.floor(seconds / 3600);
  return `${hours}:${minutesAndSeconds(seconds - hours * 3600).padStart(5, '0')}`;
}

function minutesAndSeconds(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
