/** What the guard needs of a page. */
type Page = Pick<Window, 'addEventListener' | 'removeEventListener' | 'history' | 'location'>;

/** Marks the entry of the browser's history that Back leaves first. */
const MARK = 'larkholdDrill';
/** Marks such an entry once its drill is over: Back passes over it. */
const SPENT = 'larkholdDrillOver';

/** Keeps the browser's Back from leaving a drill at once. */
export interface BackGuard {
  /** From now on Back asks. */
  begin(): void;
  /** Back is the browser's own again. */
  end(): void;
}

/**
 * Makes a guard. While it is on, an entry of its own lies on top of the browser's history: Back takes that one off, the guard puts it back and asks.
 * @param ask what Back means now; false lets it go, as there is nothing to lose
 * @param page the browser's own unless a test says otherwise
 * @returns the guard, off
 * @source WHATWG, HTML, "session history": an entry that was added without a press may be skipped by Back, so the guard goes forward to its first
 * one, which a press has added, and adds another only where the address has changed
 */
export function createBackGuard(ask: () => boolean, page: Page = window): BackGuard {
  const { history, location } = page;
  let hash: string | undefined;
  const isOurs = (): boolean => Object(history.state)[MARK] === true;
  const onPop = (): void => {
    if (hash === undefined || isOurs()) return;
    if (!ask()) {
      stop();
      return;
    }
    if (location.hash === hash) history.forward();
    else history.pushState({ [MARK]: true }, '', hash);
  };
  const stop = (): void => {
    hash = undefined;
    page.removeEventListener('popstate', onPop);
  };
  return {
    begin() {
      if (hash !== undefined) return;
      hash = location.hash;
      if (!isOurs()) history.pushState({ [MARK]: true }, '', hash);
      page.addEventListener('popstate', onPop);
    },
    end() {
      const wasOn = hash !== undefined;
      stop();
      if (!wasOn || !isOurs()) return;
      // Not removed with `back()`: that comes a moment later, and would undo where the archer goes meanwhile.
      history.replaceState({ [SPENT]: true }, '');
      passOverSpent(page);
    },
  };
}

const watched = new WeakSet<Page>();

/** One press on Back leaves both the spent entry and the one under it, which look the same. */
function passOverSpent(page: Page): void {
  const { history, location } = page;
  const isSpent = (): boolean => Object(history.state)[SPENT] === true;
  if (watched.has(page)) return;
  watched.add(page);
  let wasSpent = isSpent();
  const { hash } = location;
  page.addEventListener('popstate', () => {
    const isNow = isSpent();
    if (wasSpent && !isNow && location.hash === hash) history.back();
    wasSpent = isNow;
  });
}
