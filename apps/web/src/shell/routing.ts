import { parse } from 'regexparam';

/** The four places, in the order of the navigation. */
export const places = ['line', 'rack', 'journal', 'kit'] as const;
/** One of the four places. */
export type Place = (typeof places)[number];

/** Where in the app the archer is. */
export interface Route {
  place: Place;
  /** A program's id in the rack, a drill's or a week's in the journal; what a link holds. */
  id?: string;
  /** A page of its own within a place. */
  page?:
    | 'week'
    | 'trends'
    | 'coach'
    | 'milestones'
    | 'bench'
    | 'open'
    | 'plan'
    | 'season'
    | 'known'
    | 'box'
    | 'files'
    | 'restore';
  /** The day that a week's page opens, ISO 8601. */
  day?: string;
}

const patterns: readonly { place: Place; page?: Route['page']; pattern: RegExp }[] = [
  ...places.map((place) => ({ place, pattern: parse(`/${place}`).pattern })),
  { place: 'rack', pattern: parse('/rack/:id').pattern },
  { place: 'kit', pattern: parse('/kit/:id').pattern },
  { place: 'kit', page: 'files', pattern: parse('/files').pattern },
  { place: 'journal', pattern: parse('/journal/:id').pattern },
  { place: 'journal', page: 'week', pattern: parse('/week/:id?/:day?').pattern },
  { place: 'journal', page: 'trends', pattern: parse('/trends').pattern },
  { place: 'journal', page: 'coach', pattern: parse('/coach/:id?').pattern },
  { place: 'journal', page: 'milestones', pattern: parse('/milestones').pattern },
  { place: 'journal', page: 'restore', pattern: parse('/restore').pattern },
  { place: 'kit', page: 'known', pattern: parse('/known').pattern },
  { place: 'kit', page: 'box', pattern: parse('/box/:id?').pattern },
  { place: 'rack', page: 'season', pattern: parse('/season').pattern },
  { place: 'rack', page: 'plan', pattern: parse('/plan/:id?').pattern },
  { place: 'rack', page: 'bench', pattern: parse('/bench/:id').pattern },
  { place: 'rack', page: 'open', pattern: parse('/open/:id?').pattern },
];

/**
 * Reads the address's hash.
 * @param hash as `location.hash` gives it, `#/rack/…`
 * @returns the route; the line for anything that is no place
 */
export function routeOf(hash: string): Route {
  const path = hash.replace(/^#/, '').replace(/[?].*$/, '');
  for (const { place, page, pattern } of patterns) {
    const match = pattern.exec(path);
    if (!match) continue;
    const [id, day] = match.slice(1).map((part) => (part === undefined ? undefined : decoded(part)));
    return {
      place,
      ...(id === undefined ? {} : { id }),
      ...(page === undefined ? {} : { page }),
      ...(day === undefined ? {} : { day }),
    };
  }
  return { place: 'line' };
}

/**
 * Writes a route as a link.
 * @param place where
 * @param id of what, if anything
 * @returns a hash for `href`
 */
export function hrefOf(place: Place, id?: string): string {
  return id === undefined ? `#/${place}` : `#/${place}/${encoded(id)}`;
}

/**
 * The bench's address.
 * @param id of the program to edit, or `new`
 * @returns a hash for `href`
 */
export function benchHref(id: string): string {
  return `#/bench/${encoded(id)}`;
}

/**
 * The address of a program's coming weeks.
 * @param id of the program
 * @returns a hash for `href`
 */
export function planHref(id: string): string {
  return `#/plan/${encoded(id)}`;
}

/** Half a character can't be encoded, and must not keep a page from being drawn. */
function encoded(id: string): string {
  return encodeURIComponent(id.replace(/\p{Surrogate}/gu, '\ufffd'));
}

/** A hand-typed `%` is no reason to fail. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
