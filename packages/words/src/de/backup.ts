import type { backup as en } from '../en/backup.ts';

/** Backups: when, where to, and reminders. */
export const backup: Readonly<Record<keyof typeof en, string>> = {
  'backup.mayAsk': 'Eine Sicherung ist fällig. Der Browser fragt noch einmal, bevor er in deinen Ordner schreibt.',
  'backup.noFolder': 'Eine Sicherung ist fällig, und auf diesem Gerät ist kein Ordner gewählt.',
  'backup.failed':
    'Die Sicherung konnte nicht in deinen Ordner geschrieben werden. Ist der Ordner da, und ist Platz frei?',
  'backup.choose': 'In der Ausrüstung wählen',
  'backup.save': 'Sicherung schreiben',
  'backup.saveAll': 'Alles als Datei sichern',
  'backup.notNow': 'Jetzt nicht',
  'backup.due': 'Eine Sicherung ist fällig: Die letzte ist {days, plural, one {# Tag} other {# Tage}} alt.',
  'backup.dueNone': 'Eine Sicherung ist fällig: Es gibt noch keine.',
  'backup.heading': 'Sicherung',
  'backup.about':
    'Alles in einer Datei: Tagebuch, Programme und Ausrüstung. Wie oft soll sie entstehen, oder soll dich etwas daran erinnern?',
  'backup.chooseFolder': 'Ordner wählen',
  'backup.howOften': 'Wie oft',
  'backup.none': 'Noch keine Sicherung.',
  'backup.last': 'Die letzte Sicherung ist vom {day, date, year}.',
  'backup.cannot':
    'Dieser Browser kann nicht selbst in einen Ordner schreiben. Du wirst erinnert und sicherst die Datei selbst.',
  'backup.byItself': 'Von selbst in einen Ordner schreiben',
  'backup.noFolderHere': 'Auf diesem Gerät ist kein Ordner gewählt.',
  'backup.folder': 'Ordner: {folder}. Die letzten zehn Sicherungen dieses Geräts bleiben darin.',
  'backup.saveNow': 'Jetzt sichern',
  'backup.another': 'Anderen Ordner wählen',
  'backup.without': 'Ohne Ordner wirst du erinnert und sicherst die Datei selbst.',
  'backup.everyDays': '{days, plural, one {Jeden Tag} other {Alle # Tage}}',
  'backup.off': 'Aus',
  'backup.isWritten': 'Die Sicherung liegt im Ordner.',
  'backup.notAllowed': 'Der Browser hat es nicht erlaubt: Nichts wurde geschrieben.',
  'backup.notWritten': 'Die Sicherung konnte nicht geschrieben werden. Ist der Ordner da, und ist Platz frei?',
  'backup.everyDay': 'Jeden Tag',
  'backup.everyWeek': 'Jede Woche',
  'backup.everyTwoWeeks': 'Alle zwei Wochen',
};
