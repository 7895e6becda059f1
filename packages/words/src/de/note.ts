import type { note as en } from '../en/note.ts';

/** The notes wall. */
export const note: Readonly<Record<keyof typeof en, string>> = {
  'note.new': 'Neue Notiz',
  'note.sketch': 'Skizze',
  'note.change': 'Ändern',
  'note.changeOne': 'Ändern: {name}',
  'note.takeDown': 'Abnehmen',
  'note.takeDownOne': 'Abnehmen: {name}',
  'note.words': 'Worte',
  'note.putUp': 'Aufhängen',
  'note.leave': 'So lassen',
  'note.madeOnWeek': '{day} · Woche {week}',
  'note.withProgram': '{made} · {program}',
  'note.nothing': 'Nichts',
  'note.thisWeek': 'Diese Woche ({week})',
  'note.pinnedTo': 'Angeheftet an',
  'note.writeFirst': 'Schreib oder zeichne zuerst etwas.',
  'note.isUp': 'Die Notiz hängt an der Wand.',
  'note.isDown': 'Die Notiz ist abgenommen.',
};
