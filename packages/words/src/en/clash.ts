/** Fields that two devices changed, each in its own way. */
export const clash = {
  'clash.shootingEffort': 'shooting effort {effort, number}',
  'clash.shootingMinutes': '{minutes, number} min of shooting',
  'clash.noPain': 'no pain',
  'clash.plannedDay': 'planned day',
  'clash.weekOf': '{week} of {year}',
  'clash.place': 'place: “{text}”',
  'clash.feel': 'feel: “{text}”',
  'clash.note': 'note: “{text}”',
  'clash.goal': 'goal: “{text}”',
  'clash.focus': 'focus: “{text}”',
  'clash.wentRight': 'what went right: “{text}”',
  'clash.needsWork': 'what needs work: “{text}”',
  'clash.carriedForward': 'what goes into next week: “{text}”',
  'clash.comment': 'comment: “{text}”',
  'clash.work':
    '{minutes, number} min of {kind, select, strength {strength} mobility {mobility} fitness {fitness} other {other work}}',
  'clash.readiness': 'readiness: {word}',
  'clash.pain': 'pain',
  'clash.sketch': 'a sketch',
  'clash.plannedDays': '{n, plural, one {# planned day} other {# planned days}}',
  'clash.both':
    '{n, plural, one {# day or week} other {# days or weeks}} written on both sides: the later edit is kept',
  'clash.ours': '{day}: what is here is kept. Left out: {left}',
  'clash.theirs': '{day}: what is in the file is kept. Left out: {left}',
  'clash.earlier': 'And {n, plural, one {# earlier one} other {# earlier ones}}.',
} as const;
