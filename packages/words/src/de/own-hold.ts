import type { ownHold as en } from '../en/own-hold.ts';

/** The longest hold of the archer. */
export const ownHold: Readonly<Record<keyof typeof en, string>> = {
  'ownHold.field': 'Längster Halt, s',
  'ownHold.test': 'Ausgangstest',
  'ownHold.result':
    'Nach dem Ausgangstest vom {day, date, short} ist dein längster Halt etwa {ms, number, seconds}: was von den Halten davor noch fehlte, und der, bei dem du abgesetzt hast. Als deinen übernehmen?',
  'ownHold.resultOther':
    'Nach dem Ausgangstest vom {day, date, short} ist dein längster Halt etwa {ms, number, seconds}: was von den Halten davor noch fehlte, und der, bei dem du abgesetzt hast. In der Ausrüstung steht {kit, number, seconds}. Den neuen nehmen?',
  'ownHold.take': '{ms, number, seconds} nehmen',
  'ownHold.leave': 'So lassen',
  'ownHold.disagree': 'Deine Übungen sagen etwas anderes',
  'ownHold.disagreeWith': 'Deine Übungen sagen etwas anderes als die Ausrüstung, nämlich: {estimate}',
  'ownHold.testToday': 'Der Ausgangstest ist das heutige Programm.',
  'ownHold.takeTest': 'Den Ausgangstest heute machen',
  'ownHold.outOfRange': 'Nicht geändert: erwartet sind {least, number} bis {most, number} Sekunden.',
  'ownHold.asKit': 'Dein längster Halt: {ms, number, seconds}, wie in der Ausrüstung steht.',
  'ownHold.fromJournal': 'Dein längster Halt, aus dem Tagebuch: {estimate}',
  'ownHold.estimate':
    'Etwa {ms, number, seconds}, irgendwo zwischen {low, number, seconds} und {high, number, seconds}, {from, select, test {aus deinen letzten Tests} other {aus Halten, bei denen die Kraft ausging}}.',
  'ownHold.tooLittle':
    'Zu wenige Daten: kein Test und kein Halt, bei dem die Kraft ausging, in den letzten 8 Wochen. Mach den Ausgangstest.',
  'ownHold.old':
    'Dein letzter Ausgangstest war vor {weeks, plural, one {# Woche} other {# Wochen}}. Sein Ergebnis ist alt: Mach ihn noch einmal, bevor du der Kurve traust.',
  'ownHold.worth':
    'Dein letzter Ausgangstest war vor {weeks, plural, one {# Woche} other {# Wochen}}. Alle 4 bis 8 Wochen lohnt er sich wieder.',
};
