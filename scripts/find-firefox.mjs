import { findProgram } from './find-chromium.mjs';

/** The path of an installed Firefox: `FIREFOX_PATH` first, then PATH; undefined where there is none. */
export function findFirefox(env = process.env) {
  return findProgram(env.FIREFOX_PATH, ['firefox-esr', 'firefox'], env);
}
