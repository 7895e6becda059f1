import { emptySeason } from '@larkhold/engine';
import { expect, test } from 'vitest';
import { checkedSeason, withOne, withoutOne } from './edit-season.ts';

test('a competition is added in order, and removed again', () => {
  const late = withOne(emptySeason('Winter'), 'competitions', { title: 'B', day: '2027-01-09', importance: 'main' });
  const both = withOne(late, 'competitions', { title: 'A', day: '2026-12-05', importance: 'minor' });
  expect(both.competitions.map(({ title }) => title)).toEqual(['A', 'B']);
  expect(withoutOne(both, 'competitions', 0)).toEqual(late);
  expect(checkedSeason(both)).toEqual({ ok: true, season: both });
});

test('what no file may hold is not kept, and its problem is named', () => {
  const wrong = withOne(emptySeason('Winter'), 'restDays', { from: '2026-12-27', to: '2026-12-24' });
  expect(checkedSeason(wrong)).toMatchObject({ ok: false, problem: { pointer: '/restDays/0/to' } });
});
