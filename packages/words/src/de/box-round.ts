import type { boxRound as en } from '../en/box-round.ts';

/** What a round of the box brought and sent. */
export const boxRound: Readonly<Record<keyof typeof en, string>> = {
  'boxRound.cameIn': 'Neues von {title} ist da.',
  'boxRound.wentOut': 'Das Neue von hier ist in der Box.',
  'boxRound.takenBack':
    'Was die letzte Runde gebracht hat, ist zurückgenommen. Dieses Gerät wartet, bis du es wieder abgleichen lässt.',
};
