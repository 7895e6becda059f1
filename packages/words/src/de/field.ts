import type { field as en } from '../en/field.ts';

/** Names of a journal's fields, as a list of differences shows them. */
export const field: Readonly<Record<keyof typeof en, string>> = {
  'field.less': '{name}: {step} weniger',
  'field.more': '{name}: {step} mehr',
  'field.plain': '{n, number}',
  'field.drop': 'oder {files, select, files {Dateien} other {sie}} hier ablegen',
  'field.drilledOn': 'An {n, plural, one {# Tag} other {# Tagen}} der letzten {of, number} geübt.',
  'field.strip':
    'Von den letzten {days, plural, one {# Tag} other {# Tagen}}: eine Übung an {drills, number}, anderes Training an {others, number}.',
  'field.sketch': 'Skizze',
  'field.strokes': '{n, plural, one {# Strich} other {# Striche}}',
  'field.takeBack': 'Einen Strich zurücknehmen',
  'field.clear': 'Leeren',
  'field.timeline': '{holds} in {ms, number, duration}, maßstäblich gezeichnet',
  'field.holdsOf': '{n, plural, one {# Halt} other {# Halte}} von {hold}',
  'field.fromTo': '{least, number, seconds} bis {most, number, seconds}',
  'field.tallest': 'höchster Strich: {ms, number, seconds}',
  'field.ribbonReps': 'Wiederholungen. {words}',
  'field.heldOf': '{held} von {asked}',
  'field.whyQuestion': 'Warum?',
  'field.whyPlace': 'Warum, {place}',
  'field.nothingYet': 'Noch nichts.',
  'field.asTable': '{name} als Tabelle',
  'field.table': '{name}, Tabelle',
  'field.day': 'Tag',
  'field.week': 'Woche',
  'field.weekTo': 'Woche bis {day, date, year}',
  'field.span': '{first, date, year} bis {last, date, year}',
  'field.summary': '{name}, {span}: zuletzt {last}, am wenigsten {least}, am meisten {most}',
};
