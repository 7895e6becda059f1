import type { drill as en } from '../en/drill.ts';

/** The buttons and notices of a drill. */
export const drill: Readonly<Record<keyof typeof en, string>> = {
  'drill.begin': 'Beginnen',
  'drill.warmUp': 'Zuerst aufwärmen: {lines}.',
  'drill.stopAsked': 'Übung beenden? Noch einmal drücken beendet sie. Was du getan hast, bleibt erhalten.',
  'drill.keepGoing': 'Weitermachen',
  'drill.group': 'Übung',
  'drill.letDownNow': 'Jetzt absetzen',
  'drill.skip': 'Auslassen',
  'drill.moreRest': 'Mehr Pause',
  'drill.lessRest': 'Pause beenden',
  'drill.warmUpLine': 'Aufwärmen: {line}',
  'drill.goOn': 'Weiter',
  'drill.stop': 'Beenden',
  'drill.resume': 'Fortsetzen',
  'drill.pause': 'Anhalten',
  'drill.otherHand': 'Andere Hand',
  'drill.gamepadGone': 'Das Gamepad ist weg. Die Übung läuft weiter; nimm eine Taste oder den Bildschirm.',
  'drill.screenMaySleep':
    'Dieses Gerät schaltet den Bildschirm vielleicht ab. Stell ihn auf dauernd an oder folge dem Ton.',
  'drill.soundMissing': 'Der Ton ist nicht angelaufen. Folge dem Bildschirm.',
  'drill.timeLost':
    'Zeit ging verloren: Das Gerät hat geschlafen oder die Seite stand still. Eine laufende Wiederholung ist als unsicher eingetragen. Drück auf Fortsetzen.',
  'drill.hidden':
    'Die Seite war verdeckt und nicht zu hören. Eine laufende Wiederholung ist als unsicher eingetragen. Drück auf Fortsetzen.',
  'drill.noMicrophone':
    'Das Mikrofon ist nicht erlaubt oder nicht da. Klatschen wird nicht gehört; nimm eine Taste oder den Bildschirm.',
  'drill.microphoneGone': 'Das Mikrofon ist weg. Klatschen wird nicht gehört; nimm eine Taste oder den Bildschirm.',
  'drill.tooSmall':
    'Die Ziffern sind zu klein für {distance}. Auf diesem Bildschirm sind sie bis {reach} gut zu lesen.',
  'drill.tooSmallByMirror':
    'Die Ziffern sind zu klein für {distance}. Auf diesem Bildschirm sind sie über den Spiegel bis insgesamt {reach} gut zu lesen.',
};
