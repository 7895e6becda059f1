import type { today as en } from '../en/today.ts';

/** The line, beside the numbers: what it is done with, how long, what was done and what comes. */
export const today: Readonly<Record<keyof typeof en, string>> = {
  'today.firstRun':
    'Eine kurze Halteübung für zu Hause, nach Gehör. Jeder Halt wird hier auf diesem Gerät eingetragen, und die Übung von morgen folgt daraus.',
  'today.tool':
    '{tool, select, bow {Dein Bogen} light {Ein leichter Bogen} band {Ein Zugband} strap {Ein Gurt} other {}}',
  'today.toolWeight':
    '{tool, select, bow {Dein Bogen} light {Ein leichter Bogen} band {Ein Zugband} strap {Ein Gurt} other {}}, {weight}',
  'today.toolAdded':
    '{tool, select, bow {Dein Bogen} light {Ein leichter Bogen} band {Ein Zugband} strap {Ein Gurt} other {}}, {weight} + {added}',
  'today.press': 'Ein Druck auf einen Strich berichtigt diese Wiederholung.',
  'today.whole': 'Eine ganze Übung in dieser Zeit:',
  'today.length': '{ms, number, minutes}',
  'today.done': 'Heute geschafft',
  'today.again': 'Noch einmal beginnen',
  'today.last': 'Deine letzten Übungen',
  'today.day': '{day, date, short}',
  'then.title': 'Damals und jetzt',
  'then.seconds': '{ms, number, seconds}',
  'then.sentence': 'In den vier Wochen bis {day, date, short} hast du {past} gehalten. Jetzt sind es {now}.',
  'then.brings': 'Noch ein sauberer Morgen bringt {next}.',
  'rest.day': 'Ein Ruhetag',
  'rest.still': 'Wenn du trotzdem übst, dann höchstens das:',
  'rest.none': 'Heute wird nichts angeboten. Ruh dich aus.',
  'rest.pain': 'Hast du heute Schmerzen?',
  'rest.drill': 'Trotzdem üben',
  'today.restore': 'Aus einer Datei zurückholen',
};
