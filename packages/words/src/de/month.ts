import type { month as en } from '../en/month.ts';

/** A month of the journal. */
export const month: Readonly<Record<keyof typeof en, string>> = {
  'month.before': 'Monat davor',
  'month.after': 'Monat danach',
  'month.months': 'Monate',
  'month.one': '{month}: {ms, number, duration} im Vollauszug',
  'month.show': '{month} zeigen',
  'month.rows': 'Was gehalten wurde',
  'month.none': 'Keine Übung in diesem Monat.',
  'month.nothing': 'nichts gehalten',
  'month.arrows': '{n, plural, one {# Pfeil} other {# Pfeile}}',
  'month.key': 'Nach oben: Zeit im Vollauszug. Nach unten: Pfeile. Ein Kreuz: Schmerzen. Ein Druck öffnet den Tag.',
  'month.day':
    '{day, date, long}: {held}{arrows, plural, =0 {} one {, # Pfeil} other {, # Pfeile}}{pain, select, yes {, Schmerzen} other {}}',
  'month.sum':
    '{ms, number, duration} im Vollauszug an {drilled, plural, one {# Tag} other {# Tagen}}, {arrows, plural, one {# Pfeil} other {# Pfeile}}.',
};
