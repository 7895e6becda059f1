import type { known as en } from '../en/known.ts';

/** The page "what is known of me": the archer as the journal tells it, each thing with where it was read. */
export const known: Readonly<Record<keyof typeof en, string>> = {
  'known.title': 'Was über dich bekannt ist',
  'known.short': 'Längster Halt, Schmerzen, Rhythmus, Tests',
  'known.about':
    'Gelesen aus allem, was in deinem Tagebuch steht, gleich mit welchem Programm, und aus deiner Ausrüstung. Nichts davon wird gespeichert: Berichtige eine Übung oder einen Tag, und diese Seite und deine nächste Übung folgen.',
  'known.from': 'Gelesen aus',
  'known.fromNothing': 'Noch aus nichts gelesen.',
  'known.more': '{n, plural, one {und # weiteren} other {und # weiteren}}',
  'known.capacity': 'Wie lange du halten kannst',
  'known.capacityAbout':
    'Ein Halt, ausgeruht. Jedes Gerät für sich. Absetzen wegen der Form und volle Halte sagen „mindestens“; nur Kraft, die zu Ende war, gibt eine Zahl.',
  'known.nothingHeld': 'Noch ist nichts bekannt. Deine ersten Übungen werden es zeigen, oder sag es unten selbst.',
  'known.tool':
    '{tool, select, bow {Dein Bogen} light {Ein leichter Bogen} band {Ein Zugband} strap {Ein Gurt} other {}}',
  'known.toolAt':
    '{tool, select, bow {Dein Bogen} light {Ein leichter Bogen} band {Ein Zugband} strap {Ein Gurt} other {}}, {weight} auf den Fingern',
  'known.atLeast': 'Mindestens {ms, number, seconds}: So lange wurde gehalten.',
  'known.likelyTest': 'Etwa {ms, number, seconds}, wie deine Tests sagen.',
  'known.likelyFailures': 'Etwa {ms, number, seconds}: Da war die Kraft zu Ende.',
  'known.likelyAnswer': 'Etwa {ms, number, seconds}, wie du gesagt hast.',
  'known.atMost': 'Mehr als {ms, number, seconds} wäre neu.',
  'known.yourHold': 'Dein längster Halt, soweit du ihn kennst, Sekunden',
  'known.yourHoldAbout':
    'Ein Halt mit deinem eigenen Bogen in guter Form. Neue Programme beginnen danach. Leer gelassen zeigen es die Übungen.',
  'known.holdRange': 'Sekunden von {least, number} bis {most, number}.',
  'known.weight': 'Gewicht auf den Fingern, Alter und Bogen',
  'known.exposure': 'Was du getan hast',
  'known.never': 'Noch wurde kein Bogen und kein Band gezogen.',
  'known.lastDrawn':
    'Zuletzt gezogen am {day, date, long}, {days, plural, =0 {heute} one {gestern} other {vor # Tagen}}.',
  'known.inRow': '{days, plural, one {# Tag} other {# Tage}} nacheinander etwas gezogen; höchstens sechs.',
  'known.sevenDays':
    'Diese sieben Tage: {held, number, duration} im Vollauszug in {drills, plural, one {# Übung} other {# Übungen}}, {arrows, plural, one {# Pfeil} other {# Pfeile}}.',
  'known.weeksBefore': 'Davor, je sieben Tage, die jüngsten zuerst: {list} im Vollauszug.',
  'known.added': 'Zusatzgewicht: {weight}, erhöht am {day, date, year}.',
  'known.pain': 'Schmerzen',
  'known.painUnknown': 'Du wurdest nie gefragt oder hast nie geantwortet. Nicht beantwortet heißt nicht „keine“.',
  'known.painClear': 'Keine, soweit du gesagt hast.',
  'known.painToday': 'Heute Schmerzen: keine Übung.',
  'known.painStage':
    'Auf dem Weg zurück nach Schmerzen am {day, date, plain}: {stage, select, mimed {Ruhetage, der Schuss mit leeren Händen} band {ein Zugband} light {ein leichter Bogen} other {dein eigener Bogen}}. {answers, number} von {needed, number} schmerzfreien Tagen hier.',
  'known.painUntil':
    'Keine Übung vor dem {day, date, plain}: Zu viele Übungen haben innerhalb von zwei Wochen weh getan. Geh zuerst zur Ärztin, zum Arzt oder in die Physiotherapie.',
  'known.painAsk': 'Hast du heute Schmerzen?',
  'known.rhythm': 'Dein Rhythmus',
  'known.noRhythm': 'Keine Übung in den letzten vier Wochen.',
  'known.days': '{days, number, tenths} Tage in der Woche, über die letzten vier Wochen.',
  'known.minutes': 'Eine Übung dauert meistens {minutes, plural, one {# Minute} other {# Minuten}}.',
  'known.usualMinutes': 'Minuten, die du meistens hast',
  'known.usualMinutesAbout':
    'Danach richtet sich, mit welchem Programm eine Saison ohne Einrichtung beginnt. Leer gelassen zeigen es die Übungen.',
  'known.tests': 'Tests',
  'known.noTests': 'Noch kein Test. Einer lohnt sich alle vier bis acht Wochen.',
  'known.testSeconds': '{ms, number, seconds}',
  'known.testSecondsMore': '{ms, number, seconds} oder mehr',
  'known.testRep': 'Die Form hielt bis Wiederholung {rep, number}',
  'known.testRepMore': 'Die Form hielt auch in Wiederholung {rep, number}, der letzten',
  'known.changeNews':
    '{share, number, share} {direction, select, more {mehr} other {weniger}} als am {day, date, plain}: eine echte Änderung.',
  'known.changeNoise':
    '{share, number, share} {direction, select, more {mehr} other {weniger}} als am {day, date, plain}: im Rauschen eines solchen Tests.',
  'known.changeNone': 'Wie am {day, date, plain}.',
  'known.takeTest': 'Heute {title} nehmen',
  'known.response': 'Wie du darauf ansprichst',
  'known.responseUnknown': 'Zu wenige Übungen mit einem Programm, um etwas zu sagen.',
  'known.responseUp': 'Deine Halte werden länger.',
  'known.responseLevel': 'Deine Halte bleiben gleich.',
  'known.responseStuck': 'Festgefahren: Dieselben Halte misslingen immer wieder.',
  'known.responseSliding': 'Abwärts: Die Halte werden kürzer, weil sie misslingen.',
  'known.correctRecords': 'Stimmt eine Übung nicht? Öffne sie und berichtige ihre Wiederholungen.',
  'known.climb': 'Dein Aufstieg',
  'known.climbAbout':
    'Jeder Strich ist eine Woche: so hoch wie ihr längster voller Halt, so breit wie ihre Zeit im Vollauszug. Hohle kommen noch, wenn jede Übung sauber läuft.',
  'known.climbWords':
    '{past, plural, one {# Woche} other {# Wochen}} zurück, {ahead, plural, one {# Woche} other {# Wochen}} voraus.',
  'known.climbSentence':
    'Von {first, number, seconds} in der Woche vom {firstDay, date, plain} auf {now, number, seconds} jetzt; {ahead, number, seconds} in der Woche vom {aheadDay, date, plain}, wenn jede Übung sauber läuft.',
  'known.climbFrom':
    'Von {first, number, seconds} in der Woche vom {firstDay, date, plain} auf {now, number, seconds} jetzt.',
  'known.climbAhead':
    'Wenn jede Übung sauber läuft: {ahead, number, seconds} in der Woche vom {aheadDay, date, plain}.',
  'known.climbTable': 'Dasselbe als Tabelle',
  'known.week': 'Woche vom',
  'known.longest': 'Längster Halt',
  'known.held': 'Im Vollauszug',
  'known.now': 'diese Woche',
  'known.ahead': 'kommt noch',
  'known.none': 'keine',
};
