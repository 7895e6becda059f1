/** What the training cost. */
export const load = {
  'load.costThisWeek': 'What it cost: {ms, number, duration} at full draw this week',
  'load.cost': 'What it cost',
  'load.today': 'Today',
  'load.thisWeek': 'This week',
  'load.weekBefore': 'Week before',
  'load.about':
    'Draw impulse is weight on the fingers times time at full draw. Load is effort times minutes, of drills, shooting and other work. {leftOut}',
  'load.fullDraw': 'At full draw',
  'load.asSeen': 'Of that, as the camera saw it',
  'load.impulse': 'Draw impulse',
  'load.load': 'Load',
  'load.sevenDays': 'Last seven days: load {load, number}. {rest}',
  'load.alike': 'All seven days are alike, so monotony and strain are not defined.',
  'load.monotony':
    'Monotony {monotony, number, ratio}: their mean over their spread. Strain {strain, number}: their load times monotony.',
  'load.needs28': 'The acute:chronic ratio needs 28 days with some load. There are not that many yet.',
  'load.ratios':
    'Acute:chronic ratio, 7 days over 28: {rolling, number, ratio} by plain means, {fading, number, ratio} when older days fade.',
  'load.unrated':
    '{n, plural, one {# entry without effort or minutes counts} other {# entries without effort or minutes count}} as no load.',
  'load.unweighed':
    '{n, plural, one {# drill without a known weight counts} other {# drills without a known weight count}} as no impulse.',
  'load.inKit': 'Put it in the kit',
  'load.noLength': 'The kit does not say what you hold on the fingers. {link}, or your draw length for an estimate.',
  'load.noWeight': 'The kit does not say what you hold on the fingers. {link}, or estimate it:',
  'load.marked': 'Bow marked with, lb at 28 in',
  'load.take': 'Use {weight}',
  'load.about70': 'About {weight} at {length}. {caution}',
  'load.fingersCaution': 'An estimate. A bow scale at your own draw length is better.',
} as const;
