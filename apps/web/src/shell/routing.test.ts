import { expect, test } from 'vitest';
import { benchHref, hrefOf, routeOf } from './routing.ts';

test('each place has its own address', () => {
  expect(routeOf('#/line')).toEqual({ place: 'line' });
  expect(routeOf('#/rack')).toEqual({ place: 'rack' });
  expect(routeOf('#/journal/')).toEqual({ place: 'journal' });
  expect(routeOf('#/kit?x=1')).toEqual({ place: 'kit' });
});

test('a program and a drill are found by id', () => {
  expect(routeOf('#/rack/5f0c')).toEqual({ place: 'rack', id: '5f0c' });
  expect(routeOf(hrefOf('journal', 'a b/ç'))).toEqual({ place: 'journal', id: 'a b/ç' });
});

test('anything else is the line', () => {
  for (const hash of ['', '#', '#/', '#/nowhere', '#/kit/extra/more', '#//rack']) {
    expect(routeOf(hash)).toEqual({ place: 'line' });
  }
});

test('a broken escape is kept as it is', () => {
  expect(routeOf('#/rack/%E0%A4%A')).toEqual({ place: 'rack', id: '%E0%A4%A' });
});

test('a week, a day of it, trends and the coach have pages of their own in the journal', () => {
  expect(routeOf('#/week')).toEqual({ place: 'journal', page: 'week' });
  expect(routeOf('#/week/2026-W48/2026-11-25')).toEqual({
    place: 'journal',
    page: 'week',
    id: '2026-W48',
    day: '2026-11-25',
  });
  expect(routeOf('#/trends')).toEqual({ place: 'journal', page: 'trends' });
  expect(routeOf('#/coach')).toEqual({ place: 'journal', page: 'coach' });
});

test('the bench and a link have pages of their own in the rack', () => {
  expect(routeOf('#/bench/new')).toEqual({ place: 'rack', page: 'bench', id: 'new' });
  expect(routeOf(benchHref('a/b'))).toEqual({ place: 'rack', page: 'bench', id: 'a/b' });
  expect(routeOf('#/open/q1_-x')).toEqual({ place: 'rack', page: 'open', id: 'q1_-x' });
  expect(routeOf('#/open/')).toEqual({ place: 'rack', page: 'open' });
});
