/** A tablet on a wall is seen all night and touched by nobody; half a minute after midnight is soon enough. */
const LOOK_MS = 30_000;

/**
 * Watches the calendar: a page left open must not prescribe for yesterday.
 * @param today the archer's local day, ISO 8601
 * @param onNewDay hears when it is another day than at the last look; also an earlier one, after a flight or a clock corrected
 * @param page what tells `visibilitychange`; the document unless a test says otherwise
 * @returns stops it
 */
export function watchDay(today: () => string, onNewDay: () => void, page: EventTarget = document): () => void {
  let known = today();
  const look = (): void => {
    const day = today();
    if (day === known) return;
    known = day;
    onNewDay();
  };
  const timer = setInterval(look, LOOK_MS);
  page.addEventListener('visibilitychange', look);
  return () => {
    clearInterval(timer);
    page.removeEventListener('visibilitychange', look);
  };
}
