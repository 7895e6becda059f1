import type { prompt as en } from '../en/prompt.ts';

/** What `larkhold` prints at a prompt. */
export const prompt: Readonly<Record<keyof typeof en, string>> = {
  'prompt.good':
    '{path}: {kind, select, program {eine Programmdatei} season {eine Saisondatei} journal {eine Tagebuchdatei} backup {eine Sicherung} other {eine Übergabe}}, in Ordnung',
  'prompt.note': '{path}: Hinweis: {notice}',
  'prompt.unread': '{path}: lässt sich nicht lesen ({cause}). Prüfe den Namen und versuch es noch einmal.',
  'prompt.unwritten': '{path}: lässt sich nicht schreiben ({cause}). Es wurde nichts geändert.',
  'prompt.otherKind':
    '{path}: Das ist {kind, select, program {eine Programmdatei} season {eine Saisondatei} journal {eine Tagebuchdatei} backup {eine Sicherung} other {eine Übergabe}}. Erwartet: {kinds}.',
  'prompt.kind':
    '{kind, select, program {eine Programmdatei} season {eine Saisondatei} journal {eine Tagebuchdatei} backup {eine Sicherung} other {eine Übergabe}}',
  'prompt.canonical': '{path}: in der Standardform',
  'prompt.notCanonical': '{path}: nicht in der Standardform. `larkhold format --write` schreibt die Datei so.',
  'prompt.noDrill': 'Am {on, date, year} gibt es keine Übung und damit keine Signale.',
  'prompt.noProgram': 'Es gibt kein Programm „{name}“. Die Sicherung und die eingebauten haben:',
  'prompt.drill': '{program}, {date}',
  'prompt.dose': '{title}: {dose}',
  'prompt.rest': 'Pause: {why}',
  'prompt.why': 'Warum',
  'prompt.care': 'Achte darauf',
  'prompt.held': '{ms, number, duration} im Vollauszug',
  'prompt.meeting': 'Abgleich mit der Box …',
  'prompt.nothingNew': 'Es gibt nichts Neues.',
  'prompt.noSecret':
    'Das Geheimnis der Box fehlt. Leg den Link der Box in eine Datei und nenne sie mit --secret-file, oder setz ihn in {variable}.',
  'prompt.noFolder': 'Diese Box liegt in einem Ordner. Nenne ihn mit --folder.',
  'prompt.noOrigin': 'Diese Box liegt auf dem Server der App. Nenne seine Adresse mit --origin.',
  'prompt.otherBox':
    '{path}: Das gehört nicht zu dieser Box oder ist nicht vollständig. Entferne die Datei, um die Box als neues Gerät zu treffen.',
  'prompt.language': 'Die Sprache „{tag}“ gibt es nicht. Erwartet: {tags}.',
};
