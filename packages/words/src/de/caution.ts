import type { caution as en } from '../en/caution.ts';

/** What to take care of. */
export const caution: Readonly<Record<keyof typeof en, string>> = {
  'caution.painOn':
    'Du hattest am {on, date, plain} Schmerzen. Hör heute auf, wenn sie wiederkommen, und geh zur Ärztin, zum Arzt oder in die Physiotherapie, wenn sie bleiben. Gemeint sind Schmerzen in einem Gelenk oder stechende Schmerzen, nicht müde Muskeln.',
  'caution.lighterTool':
    '{days, plural, one {# Tag} other {# Tage}} ohne Bogen und Zugband: Beginn mit leichteren Wurfarmen oder einem Zugband und ohne Zusatzgewicht.',
  'caution.youngChild':
    'Unter 12: nur ein Zugband, mit einer Trainerin, einem Trainer oder anderen Erwachsenen neben dir.',
  'caution.young':
    'Unter 16: ein leichter Bogen, kein Zusatzgewicht und eine Trainerin oder ein Trainer, die oder der den Plan kennt.',
  'caution.compound':
    'Ein Compoundbogen zieht beim Absetzen stark, und diese Übung setzt oft ab. Halt beide Ellbogen hoch, setz langsam ab und lass zuerst eine Trainerin oder einen Trainer zusehen.',
  'caution.dryFire': 'Lass eine gespannte Sehne ohne Pfeil niemals los. Setz langsam ab, jedes Mal.',
  'caution.band': 'Prüf das Band auf Risse, befestige es gut und halt es aus der Linie deiner Augen.',
  'caution.flexible':
    'Ein Pfeil ist auf der Sehne: Stell dich nah vor einen sicheren Pfeilfang, niemand darf in der Nähe der Flugbahn sein.',
  'caution.structural':
    'Lern diese Übung von einer ausgebildeten Trainerin oder einem Trainer, bevor du sie allein machst.',
  'caution.opposite': 'Die andere Hand ist schwächer: Nimm einen leichteren Bogen oder ein Band.',
  'caution.stopOnPain':
    'Wärm dich zuerst auf. Hör bei Schmerzen auf; wenn sie bleiben, geh zur Ärztin, zum Arzt oder in die Physiotherapie.',
  'caution.coachFirst':
    'Das Wort einer ausgebildeten Trainerin oder eines Trainers, Vereins- und örtliche Regeln gehen diesem Plan vor.',
};
