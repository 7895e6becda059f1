import type { app as en } from '../en/app.ts';

/**  */
export const app: Readonly<Record<keyof typeof en, string>> = {
  'app.places': 'Bereiche',
  'app.skipToPage': 'Zum Inhalt springen',
  'app.saveEverything': 'Alles als Datei sichern',
  'app.newer': 'Eine neuere Version ist bereit.',
  'app.useNow': 'Jetzt verwenden',
  'app.fileWaits': 'Eine Datei, die du geöffnet hast, wartet.',
  'app.openInRack': 'Im Regal öffnen',
  'app.line': 'Linie',
  'app.rack': 'Regal',
  'app.journal': 'Tagebuch',
  'app.kit': 'Ausrüstung',
};
