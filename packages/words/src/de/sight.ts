import type { sight as en } from '../en/sight.ts';

/** The camera: second mirror and witness. */
export const sight: Readonly<Record<keyof typeof en, string>> = {
  'sight.heading': 'Kamera',
  'sight.about':
    'Eine Kamera kann in jeder Pause den letzten Auszug zeigen und festhalten, wann du wirklich im Vollauszug warst. Alles geschieht auf diesem Gerät: Bilder verlassen es nie und sind weg, wenn die Übung endet; behalten werden Zeiten. Einmal werden etwa 6 MB geladen.',
  'sight.on': 'Kamera in Übungen verwenden',
  'sight.fromAnchor': 'Halten ab meinem Anker zählen',
  'sight.which': 'Welche Kamera',
  'sight.anyCamera': 'Die übliche',
  'sight.nthCamera': 'Kamera {index, number}',
  'sight.setUp': 'Kamera einrichten',
  'sight.endSetUp': 'Fertig',
  'sight.looking': 'Die Kamera ist an. Nichts davon wird behalten.',
  'sight.asking': 'Warten auf die Kamera.',
  'sight.loading': 'Was dich sieht, wird geladen.',
  'sight.refused': 'Die Kamera ist hier nicht erlaubt. Die Übung geht nach der Uhr.',
  'sight.none': 'Hier ist keine Kamera. Die Übung geht nach der Uhr.',
  'sight.gone': 'Die Kamera ist weg. Die Übung geht nach der Uhr.',
  'sight.failed':
    'Auf diesem Gerät lässt sich das Halten nicht sehen ({why}). Die Wiederholung geht, die Übung geht nach der Uhr.',
  'sight.stepIn': 'Tritt ins Bild und lass beide Hände hängen.',
  'sight.comeCloser': 'Komm näher.',
  'sight.goBack': 'Geh etwas zurück.',
  'sight.moreLight': 'Mehr Licht.',
  'sight.toTheMiddle': 'Stell dich in die Mitte.',
  'sight.turnSideOn': 'Dreh die Kamera so, dass sie deine Brust sieht.',
  'sight.handsDown': 'Lass beide Hände einen Moment hängen.',
  'sight.nobody': 'Die Kamera sieht niemanden. Die Übung geht nach der Uhr.',
  'sight.good': 'Gut. Zieh einmal aus, halte drei Sekunden und setz ab, damit sie deinen Auszug kennt.',
  'sight.calibrated': 'Der Vollauszug ist erkannt. Die Kamera ist eingerichtet.',
  'sight.live': 'Was die Kamera sieht',
  'sight.replay': 'Dein letzter Auszug',
};
