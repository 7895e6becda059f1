/** A month of the journal. */
export const month = {
  'month.before': 'Month before',
  'month.after': 'Month after',
  'month.months': 'Months',
  'month.one': '{month}: {ms, number, duration} at full draw',
  'month.show': 'Show {month}',
  'month.rows': 'What was held',
  'month.none': 'No drill in this month.',
  'month.nothing': 'nothing held',
  'month.arrows': '{n, plural, one {# arrow} other {# arrows}}',
  'month.key': 'Up: time at full draw. Down: arrows. A cross: pain. Press a day to open it.',
  'month.day':
    '{day, date, long}: {held}{arrows, plural, =0 {} one {, # arrow} other {, # arrows}}{pain, select, yes {, pain} other {}}',
  'month.sum':
    '{ms, number, duration} at full draw on {drilled, plural, one {# day} other {# days}}, {arrows, plural, one {# arrow} other {# arrows}}.',
} as const;
