import type { about as en } from '../en/about.ts';

/** The page that says what Larkhold is. */
export const about: Readonly<Record<keyof typeof en, string>> = {
  'about.emptyHands': 'Leere Hände',
  'about.done': 'Fertig. {held, number} von {reps, number} gehalten. In der App steht das jetzt im Tagebuch.',
  'about.title': 'Über Larkhold',
  'about.description':
    'Was Larkhold ist, eine Übung zum Ausprobieren, Programmdateien zum Mitnehmen und wie eine Übung in eine Seite kommt.',
  'about.thisPage': 'Diese Seite auf Deutsch',
  'about.what':
    'Training zu Hause, vor der Arbeit: ein gespannter Bogen, kein Pfeil, ein Spiegel, und Auszüge, die gehalten und wieder abgesetzt werden. Beide Hände sind am Bogen. Larkhold sagt, was heute dran ist und warum, führt dich mit dem Ohr und auf einen Blick hindurch und macht aus dem, was du wirklich gehalten hast, die Zahlen von morgen.',
  'about.open': 'App öffnen',
  'about.try': 'Probier es aus: dreißig Sekunden, mit leeren Händen',
  'about.place':
    'Stell das Gerät dorthin, wo du es vom Stand aus siehst, drück auf „Beginnen“ und mach mit leeren Händen, was du hörst.',
  'about.neverLetGo':
    'Lass mit einem echten Bogen eine gespannte Sehne ohne Pfeil niemals los. Setz langsam ab, jedes Mal.',
  'about.pain': 'Hör bei Schmerzen auf.',
  'about.programs': 'Programme zum Mitnehmen',
  'about.files':
    'Einfache Dateien. Jede folgt einer veröffentlichten Quelle und nennt sie. Öffne eine im Regal oder ändere sie in einem beliebigen Editor. Der Text in den Dateien ist Englisch; die App zeigt ihre eingebauten Programme auf Deutsch.',
  'about.embed': 'Eine Übung in deiner eigenen Seite',
  'about.element': 'Die Übung ist ein Element. Leg den Ordner {folder} von {package} neben deine Seite:',
  'about.formats': 'Dateiformate',
  'about.schemas': 'Alles ist einfaches JSON mit einem Schema: {program}, {season}, {journal}, {handOver}, {backup}.',
  'about.program': 'Programm',
  'about.season': 'Saison',
  'about.journal': 'Tagebuch',
  'about.handOver': 'Übergabe',
  'about.backup': 'Sicherung',
  'about.builtOn': 'Worauf Larkhold baut, mit den {licences} im Wortlaut.',
  'about.licences': 'Lizenzen',
  'about.footer':
    'Alles bleibt auf diesem Gerät. Qualifizierte Trainerinnen und Trainer, ärztlicher Rat und die Regeln von Verein und Ort gehen allem vor, was hier steht.',
  'about.noScript': 'Die Übung braucht JavaScript. Alles bleibt auf diesem Gerät.',
};
