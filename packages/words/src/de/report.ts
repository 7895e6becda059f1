import type { report as en } from '../en/report.ts';

/** What a check of the store found, and what was left of an import. */
export const report: Readonly<Record<keyof typeof en, string>> = {
  'report.programs': '{n, plural, one {# Programm} other {# Programme}}',
  'report.drills': '{n, plural, one {# Übung} other {# Übungen}}',
  'report.days': '{n, plural, one {# Tag} other {# Tage}}',
  'report.weeks': '{n, plural, one {# Wochenseite} other {# Wochenseiten}}',
  'report.notes': '{n, plural, one {# Notiz} other {# Notizen}}',
  'report.milestones': '{n, plural, one {# Meilenstein} other {# Meilensteine}}',
  'report.kit': '{n, plural, one {# Teil der Ausrüstung} other {# Teile der Ausrüstung}}',
  'report.majorGoal': '{n, plural, one {das große Ziel} other {# große Ziele}}',
  'report.other': '{n, plural, one {# anderer Wert} other {# andere Werte}}',
  'report.oneProgram': 'Programm',
  'report.oneDrill': 'Übung',
  'report.oneDay': 'Tag',
  'report.oneWeek': 'Wochenseite',
  'report.oneNote': 'Notiz',
  'report.oneMilestone': 'Meilenstein',
  'report.oneSetting': 'Einstellung',
  'report.unwritten': '{n, plural, one {Eine Änderung ist} other {# Änderungen sind}} noch nicht gespeichert.',
  'report.inOrder': 'Alles Gelesene ist in Ordnung.',
  'report.setAside':
    '{n, plural, one {# Wert war} other {# Werte waren}} nicht zu lesen. Nichts wurde weggeworfen: Das Gefundene liegt beiseite und ist in der Datei mit allem vom Speicher enthalten.',
  'report.emptyDisk': 'Auf diesem Gerät ist noch nichts.',
  'report.emptyMemory': 'Im Arbeitsspeicher ist noch nichts.',
  'report.readDisk': 'Auf diesem Gerät gelesen: {things}.',
  'report.readMemory': 'Im Arbeitsspeicher gelesen: {things}.',
  'report.opened': '{n, plural, one {# Programm} other {# Programme}}',
};
