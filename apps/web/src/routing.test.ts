import { expect, test } from 'vitest';
import { hrefOf, routeOf } from './routing.ts';

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
  for (const hash of ['', '#', '#/', '#/nowhere', '#/kit/extra', '#//rack']) {
    expect(routeOf(hash)).toEqual({ place: 'line' });
  }
});

test('a broken escape is taken as it is', () => {
  expect(routeOf('#/rack/%E0%A4%A')).toEqual({ place: 'rack', id: '%E0%A4%A' });
});
