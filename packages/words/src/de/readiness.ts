import type { readiness as en } from '../en/readiness.ts';

/** The archer's own word for today. */
export const readiness: Readonly<Record<keyof typeof en, string>> = {
  'readiness.fresh': 'frisch',
  'readiness.usual': 'wie immer',
  'readiness.heavy': 'schlapp',
  'readiness.freshEffect':
    'Frisch: Nichts ändert sich. Ein guter Tag legt nichts drauf, denn nur saubere Einheiten führen eine Stufe höher.',
  'readiness.usualEffect': 'Wie immer: Nichts ändert sich.',
  'readiness.heavyNoMore':
    'Schlapp: Es wird nicht noch mehr weggenommen. Kürzungen werden nicht addiert, und eine größere wirkt schon.',
  'readiness.ask': 'Wie geht es dir heute?',
  'readiness.today': 'Heute bin ich',
};
