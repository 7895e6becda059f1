/** A week in words. */
export const week = {
  'week.title': 'Week {week, number}',
  'week.span': '{first, date, short} to {last, date, short}',
  'week.spanInYear': '{first, date, short} to {last, date, shortYear}',
  'week.spanOverYears': '{first, date, shortYear} to {last, date, shortYear}',
  'week.drills':
    '{drills, plural, one {# drill} other {# drills}}, {held, number} of {reps, plural, one {# rep} other {# reps}} held, {ms, number, duration} at full draw',
  'week.arrows': '{n, plural, one {# arrow} other {# arrows}}',
  'week.otherWork': '{ms, number, minutes} other work',
  'week.note': 'A note',
  'week.nothing': 'Nothing written',
  'week.totalHold': 'Time at full draw',
  'week.totalDrills': 'Drills',
  'week.totalReps': 'Reps held',
  'week.totalArrows': 'Arrows',
  'week.totalWork': 'Other work',
  'week.totalFeel': 'Feel, 1 to 5',
  'week.ofReps': '{held, number} of {reps, number}',
  'week.planned': '{done, number} of {planned, plural, one {# planned day} other {# planned days}} drilled.',
} as const;
