/** What is met on the occasions. */
export interface Meets {
  meet(why?: 'online'): Promise<unknown>;
}

/** What the occasions are heard from. */
export interface OccasionParts {
  /** The page: `visibilitychange`. */
  document: Pick<Document, 'visibilityState' | 'addEventListener'>;
  /** The window: `online`. */
  window: Pick<Window, 'addEventListener'>;
  /** Hears of every change of the app; tells whether a drill fills the screen. */
  onDrilling(hear: (isDrilling: boolean) => void): void;
}

/**
 * Meets on opening, on coming back to the page or to the network, and after a drill; never in one. What an edit asks for, the keeper does by itself.
 * @param box what is met
 * @param parts see `OccasionParts`
 */
export function meetOnOccasions(box: Meets, { document, window, onDrilling }: OccasionParts): void {
  let isDrilling = false;
  const meet = (why?: 'online'): void => {
    if (!isDrilling) void box.meet(why);
  };
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') meet();
  });
  window.addEventListener('online', () => meet('online'));
  onDrilling((now) => {
    const isOver = isDrilling && !now;
    isDrilling = now;
    if (isOver) meet();
  });
  meet();
}
