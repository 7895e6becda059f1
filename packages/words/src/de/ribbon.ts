import type { ribbon as en } from '../en/ribbon.ts';

/** The hold ribbon, for those who do not see it, and the answers to one of its reps. */
export const ribbon: Readonly<Record<keyof typeof en, string>> = {
  'ribbon.held': 'Gehalten',
  'ribbon.short': 'Zu kurz',
  'ribbon.skipped': 'Ausgelassen',
  'ribbon.unsure': 'Unsicher',
  'ribbon.form': 'Form',
  'ribbon.tired': 'Müde',
  'ribbon.interrupted': 'Gestört',
  'ribbon.repComing': 'Wiederholung {rep, number}: kommt noch, {asked, number, seconds}',
  'ribbon.repNow': 'Wiederholung {rep, number}: jetzt, {asked, number, seconds}',
  'ribbon.repHeld': 'Wiederholung {rep, number}: {held, number, seconds} gehalten',
  'ribbon.repShort': 'Wiederholung {rep, number}: {held, number, seconds} von {asked, number, seconds}',
  'ribbon.repShortWhy':
    'Wiederholung {rep, number}: {held, number, seconds} von {asked, number, seconds}, {why, select, form {Form} tired {müde} interrupted {gestört} other {}}',
  'ribbon.repSkipped': 'Wiederholung {rep, number}: ausgelassen',
  'ribbon.repUnsure': 'Wiederholung {rep, number}: unsicher',
  'ribbon.all': '{reps, plural, one {# Wiederholung} other {# Wiederholungen}}: {kinds}.',
  'ribbon.countHeld': '{n, number} gehalten',
  'ribbon.countShort': '{n, number} zu kurz',
  'ribbon.countSkipped': '{n, number} ausgelassen',
  'ribbon.countUnsure': '{n, number} unsicher',
  'ribbon.countNow': '{n, number} im Gang',
  'ribbon.countComing': '{n, number} noch offen',
  'ribbon.more': 'Und {n, number} weitere.',
  'ribbon.told': '{rep}.',
};
