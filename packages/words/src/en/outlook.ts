/** What a drill will do to the archer, by the model. */
export const outlook = {
  'outlook.holds':
    'You should hold all {count, number}. At the hardest moment about {left, number, share} is left (an estimate).',
  'outlook.holdsAtLimit':
    'By the estimate you can only just hold all {count, number}: the hardest will be at your limit, with next to nothing left. Let down when form goes.',
  'outlook.holdsOneAtLimit':
    'By the estimate you can only just hold it: its end will be at your limit, with next to nothing left. Let down when form goes.',
  'outlook.holdsOne': 'You should hold it. At the end about {left, number, share} is left (an estimate).',
  'outlook.heldBefore': 'You held as much as this on {day, date, long}. Let down when form goes.',
  'outlook.fails': 'By the estimate you could no longer hold in {place}, after {ms, number, seconds}.',
  'outlook.careful':
    'By the careful reading, in which strength comes back by half in 72 seconds, your limit is {place}. The estimate is kinder: by it you should hold them all.',
  'outlook.nothing': 'There is nothing to hold.',
  'outlook.afterFirst': 'After the first hold {left, number, share} is left.',
  'outlook.lowest': 'The hardest moment is in {place}.',
  'outlook.rangeHolds':
    'If your longest hold is {longest, number, seconds}, you should hold every rep, with about {left, number, share} left at the hardest moment (dotted).',
  'outlook.rangeAtLimit':
    'If your longest hold is {longest, number, seconds}, you can only just hold every rep, the hardest at your limit (dotted).',
  'outlook.rangeFails':
    'If your longest hold is {longest, number, seconds}, you could no longer hold in {place}, after {ms, number, seconds} (dotted).',
  'outlook.unknown': 'Not known yet: too little data.',
  'outlook.rep': 'rep {rep, number}',
  'outlook.repInSet': 'rep {rep, number} of set {set, number}',
  'outlook.repInBlock': 'rep {rep, number} of {title}',
  'outlook.repInSetOfBlock': 'rep {rep, number} of set {set, number} of {title}',
  'outlook.caution':
    'This describes a model of tired muscle. It was not calibrated on archers and is kind to moderate drills. Let down when form goes.',
  'outlook.top': 'Top: fresh. Bottom: empty.',
  'outlook.dashed': 'Dashed: here you could no longer hold',
  'outlook.noCurve': 'No curve yet.',
  'outlook.howHard': 'How hard it will be',
  'outlook.otherTool':
    'This assumes that the {tool, select, light {light bow} band {stretch band} other {strap}} is as heavy as the bow of your longest hold. A lighter one leaves more.',
} as const;
