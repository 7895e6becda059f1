import type { app as en } from '../en/app.ts';

/** What surrounds every place: navigation, notices, titles. */
export const app: Readonly<Record<keyof typeof en, string>> = {
  'app.places': 'Bereiche',
  'app.skipToPage': 'Zum Inhalt springen',
  'app.saveEverything': 'Alles als Datei sichern',
  'app.readingOlder': 'Die älteren Übungen werden gelesen …',
  'app.newer': 'Eine neuere Version ist bereit.',
  'app.useNow': 'Jetzt verwenden',
  'app.fileWaits': 'Eine Datei, die du geöffnet hast, wartet.',
  'app.openInRack': 'Im Regal öffnen',
  'app.line': 'Linie',
  'app.rack': 'Regal',
  'app.journal': 'Tagebuch',
  'app.kit': 'Ausrüstung',
  'app.pageMissing': 'Diese Seite ließ sich nicht laden',
  'app.pageMissingAbout':
    'Ihr Teil von Larkhold kam nicht vom Server: Das Netz ist weg, oder die App wurde dort aktualisiert. Nichts ist verloren, und die Übung geht.',
  'app.fetching': 'Sie wird noch einmal geladen.',
  'app.loadAgain': 'Die ganze App neu laden',
  'app.partMissing':
    'Ein Teil von Larkhold ließ sich nicht vom Server laden. Was du siehst, geht; lade die App neu, wenn das Netz wieder da ist.',
  'app.fault':
    'In Larkhold ist etwas fehlgeschlagen ({reason}). Die letzte Änderung ist vielleicht nicht gespeichert. Sichere alles als Datei, dann lade die Seite neu.',
  'app.offlineReady': 'Bereit, ohne Netz zu arbeiten.',
};
