/** How long after a press its control is looked at in every frame, milliseconds. */
const EVERY_FRAME_MS = 2000;
/** How long it may still go away while it keeps the focus, milliseconds: storing half a year takes many seconds on a slow phone. */
const WATCHED_MS = 60_000;
/** How often it is looked at by then, milliseconds. */
const LATER_MS = 100;

const stops = 'a[href], button, input, select, textarea, summary, [tabindex="0"]';

/** Where a control was: one entry for each shadow root around it, the innermost first. */
type Place = readonly { root: ShadowRoot; before: readonly Element[] }[];

/**
 * Keeps the focus near what was pressed, when the press takes the control itself away: a row that is removed, a button that becomes
 * another. Without it the next tab key would begin at the top of the page, and a screen reader would fall silent.
 * @param app the element that holds all places; left alone is what goes away as a whole, as a page does
 * @param fallback takes the focus when nothing near is left
 * @returns stops keeping it
 */
export function keepFocus(app: HTMLElement, fallback: () => void): () => void {
  let watch = 0;
  let later: ReturnType<typeof setTimeout> | undefined;
  const stop = (): void => {
    cancelAnimationFrame(watch);
    clearTimeout(later);
  };
  const onPress = (): void => {
    stop();
    const control = activeElement();
    if (!control) return;
    // A drill hears its keys wherever the focus is, and none of its buttons may get what was meant for a pedal.
    const isDrill = isInDrill(control);
    const place = isDrill ? [] : placeOf(control, app);
    const pressedAt = performance.now();
    const look = (): void => {
      const now = activeElement();
      if (now && now !== control) return; // the focus has a place again, and may go from there past the last stop
      const isOff = !isDrill && (control.matches(':disabled') || !control.checkVisibility());
      const isGone = isOff || !control.isConnected;
      if (isGone && !now) return void (focusNear(place) || fallback());
      const passedMs = performance.now() - pressedAt;
      if (passedMs < EVERY_FRAME_MS) watch = requestAnimationFrame(look);
      else if (passedMs < WATCHED_MS && !isDrill && now === control) later = setTimeout(look, LATER_MS);
    };
    watch = requestAnimationFrame(look);
  };
  const kinds = ['click', 'change'] as const;
  for (const kind of kinds) window.addEventListener(kind, onPress, { capture: true });
  return () => {
    stop();
    for (const kind of kinds) window.removeEventListener(kind, onPress, { capture: true });
  };
}

/** What has the focus through all shadow roots; undefined where nothing has. */
function activeElement(): Element | undefined {
  let at = document.activeElement;
  while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
  return at === null || at === document.body || at === document.documentElement ? undefined : at;
}

function isInDrill(control: Element): boolean {
  const root = control.getRootNode();
  return root instanceof ShadowRoot && root.host.localName === 'lark-drill';
}

function stopsIn(root: ShadowRoot): Element[] {
  return [...root.querySelectorAll(stops)].filter(
    (one) => !one.matches(':disabled, [tabindex="-1"]') && one.checkVisibility(),
  );
}

function placeOf(control: Element, app: HTMLElement): Place {
  const place: { root: ShadowRoot; before: Element[] }[] = [];
  for (let at = control, root = at.getRootNode(); root instanceof ShadowRoot && root.host !== app; ) {
    const here = at;
    const isBefore = (one: Element) =>
      (here.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_PRECEDING) !== 0 && !one.contains(here);
    place.push({ root, before: stopsIn(root).filter(isBefore) });
    at = root.host;
    root = at.getRootNode();
  }
  return place;
}

/** Focuses what is now where the control was, else what is before it. */
function focusNear(place: Place): boolean {
  for (const { root, before } of place) {
    if (!root.host.isConnected) continue;
    const now = stopsIn(root);
    const last = before.findLast((one) => now.includes(one));
    const next = now[last ? now.indexOf(last) + 1 : 0] ?? last;
    if (next instanceof HTMLElement) {
      next.focus();
      return true;
    }
  }
  return false;
}
