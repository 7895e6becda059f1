import type { trouble as en } from '../en/trouble.ts';

/** What is wrong with what is kept, and with the sound. */
export const trouble: Readonly<Record<keyof typeof en, string>> = {
  'trouble.refused':
    'Dieser Browser speichert nichts für diese Seite. Was du jetzt tust, bleibt nur, bis die Seite geschlossen wird. Sichere es vorher als Datei.',
  'trouble.full':
    'Auf dem Gerät ist kein Platz mehr, deshalb ist die letzte Änderung nicht gespeichert. Sie bleibt, solange die Seite offen ist. Sichere sie als Datei und mach dann Platz.',
  'trouble.blocked':
    'Ein anderer Tab hält das Tagebuch fest. Schließ die anderen Tabs und lade diese Seite neu. Sichere bis dahin als Datei, was du tust.',
  'trouble.damaged':
    'Das Tagebuch auf diesem Gerät ließ sich nicht lesen oder schreiben. Was du jetzt tust, bleibt nur, bis die Seite geschlossen wird. Sichere es als Datei.',
  'trouble.newer':
    'Auf diesem Gerät wurde eine neuere Version der App geöffnet. Lade diese Seite neu. Sichere bis dahin als Datei, was du tust.',
  'trouble.notKept':
    '{thing, select, program {Dieses Programm} drill {Diese Übung} day {Dieser Tag im Tagebuch} week {Diese Wochenseite} note {Diese Notiz} milestone {Dieser Meilenstein} kit {Dieser Teil der Ausrüstung} running {Die laufende Übung} goal {Das große Ziel} season {Diese Saison} other {Dieser Teil einer neueren App}} wurde nicht gespeichert. {reason} Ändere es und versuch es noch einmal.',
  'trouble.notKeptAt':
    '{thing, select, program {Dieses Programm} drill {Diese Übung} day {Dieser Tag im Tagebuch} week {Diese Wochenseite} note {Diese Notiz} milestone {Dieser Meilenstein} kit {Dieser Teil der Ausrüstung} running {Die laufende Übung} goal {Das große Ziel} season {Diese Saison} other {Dieser Teil einer neueren App}} wurde nicht gespeichert ({where}). {reason} Ändere es und versuch es noch einmal.',
  'trouble.tooLong': 'Es sind {length, number} Zeichen, und höchstens {most, number} passen hinein.',
  'trouble.nothingOnDisk': 'Auf dem Gerät ist nichts gespeichert.',
  'trouble.diskUnread': 'Der Browser lässt nicht zu, dass das Gespeicherte gelesen wird.',
  'trouble.close': 'Schließen',
  'trouble.noSound': 'Dieses Gerät hat keinen Ton. Folge dem Bildschirm.',
  'trouble.soundRefused':
    'Der Browser lässt den Ton noch nicht zu. Drück irgendetwas, um ihn zu starten; folge bis dahin dem Bildschirm.',
  'trouble.soundStalled':
    'Der Ton ist stehen geblieben. Folge dem Bildschirm; er kommt von selbst wieder, sobald er kann.',
  'trouble.wordless': 'Die gesprochenen Worte sind nicht geladen. An ihrer Stelle kommen Töne.',
};
