import type { press as en } from '../en/press.ts';

/** Keys and other presses, as the archer knows them. */
export const press: Readonly<Record<keyof typeof en, string>> = {
  'press.Space': 'Leertaste',
  'press.Enter': 'Eingabe',
  'press.NumpadEnter': 'Eingabe, Ziffernblock',
  'press.Escape': 'Escape',
  'press.PageUp': 'Bild auf',
  'press.PageDown': 'Bild ab',
  'press.ArrowUp': 'Pfeil auf',
  'press.ArrowDown': 'Pfeil ab',
  'press.ArrowLeft': 'Pfeil links',
  'press.ArrowRight': 'Pfeil rechts',
  'press.Backspace': 'Rücktaste',
  'press.Tab': 'Tabulator',
  'press.Clap': 'Klatschen',
  'press.HeadsetPlay': 'Headset, Wiedergabe oder Pause',
  'press.HeadsetNext': 'Headset, weiter',
  'press.HeadsetPrevious': 'Headset, zurück',
  'press.gamepad': 'Gamepad-Taste {button, number}',
  'press.key': 'Taste {key}',
  'press.keyOnPad': 'Taste {key}, Ziffernblock',
};
