import { localeOf } from '@larkhold/words';

/**
 * Gives the page a language that `Intl` knows, where the browser's own is not one: "C" on a bare Linux machine. The chart library makes a number format of
 * `navigator.language` while it loads, and throws there; import this before it. It can go when uPlot (1.6.32) no longer does.
 */
try {
  new Intl.Locale(navigator.language);
} catch {
  Object.defineProperty(navigator, 'language', { value: localeOf(navigator.language), configurable: true });
}
