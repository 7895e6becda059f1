/** What a calendar file says of a day: what was done, and what is planned. */
export const calendar = {
  'calendar.drill': '{program}: {held, number} of {reps, number} held',
  'calendar.drillAbout': '{ms, number, duration} at full draw.',
  'calendar.drillEffort': '{ms, number, duration} at full draw. Effort {effort, number} of 10.',
  'calendar.drillSeen': 'Of that, as the camera saw it: {ms, number, duration}.',
  'calendar.arrows':
    '{n, plural, one {# arrow} other {# arrows}}, {kind, select, blankBale {blank bale} practice {practice} other {scoring}}',
  'calendar.work': '{kind, select, strength {strength} mobility {mobility} other {fitness}}, {ms, number, minutes}',
  'calendar.dayDrill': '{title} {sets, number} × {reps, number}, hold {hold, number, seconds}',
  'calendar.dayDrillAdded': '{title} {sets, number} × {reps, number}, hold {hold, number, seconds}, {weight} added',
  'calendar.planned': '{program}: {drills}',
  'calendar.plannedAbout':
    '{drills}. {held, number, duration} at full draw, {all, number, minutes} in all.{kind, select, deload { Lighter week.} taper { Lighter before the competition.} test { A test.} other {}} A forecast: what is really held changes it.',
  'calendar.competition': 'Competition',
  'calendar.competitionAbout': 'No drill on this day nor the day before.',
} as const;
