import type { trend as en } from '../en/trend.ts';

/** What is drawn over the weeks. */
export const trend: Readonly<Record<keyof typeof en, string>> = {
  'trend.hold': 'Zeit im Vollauszug',
  'trend.holdAbout': 'Alle Halte eines Tages zusammen, so weit sie gehalten wurden.',
  'trend.longest': 'Längster sauberer Halt',
  'trend.longestAbout': 'Der längste Halt eines Tages, der ganz gehalten wurde.',
  'trend.whole': 'Wie lange ein Halt ruhig bleibt',
  'trend.wholeAbout':
    'Vom Anker, bis sich Ellbogen, Bogenschulter oder Zughand bewegt hatten, wie eine Kamera es sah: der mittlere Wert all dieser Halte.',
  'trend.arrows': 'Pfeile',
  'trend.arrowsAbout': 'Pfeile jeder Art, wie du sie aufgeschrieben hast.',
  'trend.load': 'Belastung',
  'trend.loadAbout': 'Anstrengung mal Minuten, aus Übungen, Schießen und anderem Training.',
  'trend.monotony': 'Gleichförmigkeit',
  'trend.monotonyAbout':
    'Wie ähnlich die letzten sieben Tage waren: ihre mittlere Belastung geteilt durch deren Streuung.',
  'trend.strain': 'Beanspruchung',
  'trend.strainAbout': 'Die Belastung der letzten sieben Tage mal ihre Gleichförmigkeit.',
  'trend.ratio': 'Verhältnis akut zu chronisch',
  'trend.ratioAbout':
    'Mittlere Belastung der letzten 7 Tage geteilt durch die der letzten 28. Dieses Verhältnis beschreibt, was getan wurde. Es sagt keine Verletzung voraus.',
  'trend.feel': 'Gefühl',
  'trend.feelAbout': '1 ist schlecht, 5 ist sehr gut.',
  'trend.unitMinutes': 'Minuten',
  'trend.unitSeconds': 'Sekunden',
  'trend.unitLoad': 'Anstrengung × Minuten',
  'trend.unitRatio': 'Verhältnis',
  'trend.unitStrain': 'Belastung × Gleichförmigkeit',
  'trend.unitFeel': '1 bis 5',
  'trend.derived': 'Wie gleichmäßig die Belastung war: Gleichförmigkeit, Beanspruchung, Verhältnis akut zu chronisch',
  'trend.trends': 'Verläufe',
  'trend.empty': 'Noch nichts. Verläufe erscheinen, sobald eine Übung oder ein Tag im Tagebuch steht.',
  'trend.writeDay': 'Einen Tag eintragen',
  'trend.span': 'Zeitraum',
  'trend.toMilestones': 'Meilensteine: was du erreicht hast und was offen ist',
  'trend.pointDay': 'Ein Punkt ist ein Tag.',
  'trend.pointWeek': 'Ein Punkt ist eine Woche.',
  'trend.pressPoint': '{point} Drück auf einen, um seinen Tag zu öffnen. {unrated}',
  'trend.unrated':
    '{n, plural, one {# Eintrag ohne Anstrengung oder Minuten zählt} other {# Einträge ohne Anstrengung oder Minuten zählen}} nicht als Belastung.',
  'trend.everything': 'Alles',
  'trend.weeks12': '12 Wochen',
  'trend.halfYear': 'Halbjahr',
  'trend.year': 'Jahr',
  'verdict.better': 'Besser',
  'verdict.level': 'Gleichauf',
  'verdict.worse': 'Schlechter',
  'verdict.unclear': 'Noch nicht zu sagen',
  'verdict.unclearWhy':
    'Es braucht drei Tage mit einem sauberen Halt in den letzten vier Wochen und drei in den vier davor; oder zwei Tests.',
  'verdict.byHolds':
    'Der längste saubere Halt eines üblichen Tages: {now, number, seconds} in den letzten vier Wochen, {before, number, seconds} in den vier davor. Weniger als ein Viertel auf oder ab gilt als gleichauf.',
  'verdict.byTest':
    'Test „{title}“: {value, number, seconds}, vorher {from, number, seconds} am {day, date, short}. Weniger als ein Viertel auf oder ab gilt als gleichauf.',
  'verdict.byTestReps':
    'Test „{title}“: Die Form hielt bis Wiederholung {value, number}, vorher bis {from, number} am {day, date, short}. Weniger als ein Viertel auf oder ab gilt als gleichauf.',
};
