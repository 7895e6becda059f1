import {
  type DatedSessions,
  emptySeason,
  type Season,
  type SeasonNotice,
  seasonNotices,
  takeDatedSessions,
} from '@larkhold/engine';
import { noticeWords, say, sessionWords } from '@larkhold/words';
import { html, nothing, type TemplateResult } from 'lit';
import type { AppView } from '../app-context.ts';

/** Notices that are about the days themselves. */
const shown: readonly SeasonNotice['rule'][] = ['answersOverlap', 'sessionOnRestDay', 'programMissing'];

/**
 * What a coach wrote for certain days, before the archer accepts it: every day, the parts that will not happen, and where it overlaps an earlier month.
 * @param dated the coach's days
 * @param view the app as it is
 * @param take puts them in the season
 * @returns a part of the page
 */
export function daysToTake(dated: DatedSessions, view: AppView, take: (season: Season) => void): TemplateResult {
  const own = view.season.own ?? emptySeason(say('plan.mySeason'));
  const season = takeDatedSessions(own, dated);
  const before = seasonNotices(own, view.programs).map(({ message }) => message);
  const notices = seasonNotices(season, view.programs).filter(
    ({ rule, message }) => shown.includes(rule) && !before.includes(message),
  );
  const { from, to, sessions } = dated;
  const isOverlap = notices.some(({ rule }) => rule === 'answersOverlap');
  return html`<p>${say('file.withDays', { from, to, sessions: sessions.length })}</p>
    <ul class="days">
      ${sessions.map((session) => html`<li>${sessionWords(session)}</li>`)}
    </ul>
    ${notices.map((notice) => html`<p><strong>${noticeWords(notice)}</strong></p>`)}
    ${isOverlap ? html`<p>${say('file.daysOverlap')}</p>` : nothing}
    ${season === own ? html`<p>${say('file.daysThere')}</p>` : html`<div><button class="main" @click=${() => take(season)}>${say('file.takeDays')}</button></div>`}`;
}
