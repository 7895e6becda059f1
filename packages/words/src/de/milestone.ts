import type { milestone as en } from '../en/milestone.ts';

/** Milestones. */
export const milestone: Readonly<Record<keyof typeof en, string>> = {
  'milestone.milestones': 'Meilensteine',
  'milestone.about': 'Was du erreichen willst und was du erreicht hast. In deinen Worten, in deinem Tempo.',
  'milestone.what': 'Was willst du erreichen?',
  'milestone.write': 'Aufschreiben',
  'milestone.open': 'Noch offen',
  'milestone.reached': 'Erreicht',
  'milestone.trends': 'Verläufe',
  'milestone.journal': 'Tagebuch',
  'milestone.none': 'Noch nichts. Was du erreichst, steht hier mit seinem Tag.',
  'milestone.changeOf': 'Ändern: {text}',
  'milestone.change': 'Ändern',
  'milestone.reachedOf': 'Erreicht: {text}',
  'milestone.milestone': 'Meilenstein',
  'milestone.reachedOn': 'Erreicht am',
  'milestone.how': 'Wie es dazu kam',
  'milestone.withoutDay': 'Ohne Tag ist er noch offen.',
  'milestone.keep': 'Speichern',
  'milestone.leave': 'So lassen',
  'milestone.takeOff': 'Entfernen',
  'milestone.writtenDown': 'Aufgeschrieben am {day, date, year}.',
  'milestone.reachedDay': 'Erreicht am {link}.',
};
