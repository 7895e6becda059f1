import type { Kit } from '@larkhold/store';
import { formatDistance, formatRow, formatShare, formatWeight, languages, pressWords, say } from '@larkhold/words';
import type { App, AppView } from '../shell/app-context.ts';
import { boxState } from './box-state.ts';

/** The pages of the kit, in the order of its index. */
export const kitPages = [
  ...(['bow', 'shot-process', 'sound', 'display', 'controls'] as const),
  ...(['camera', 'backup', 'stored', 'safety'] as const),
] as const;
/** One of them. */
export type KitPage = (typeof kitPages)[number];

/** A row of the index: what it is, and how it is set now. */
export interface KitRow {
  href: string;
  name: string;
  value: string;
}

/**
 * The index of the kit: each row shows what is set now.
 * @param view the app's
 * @param box what joins devices, where they can be joined here
 * @returns rows in their order
 */
export function kitRows({ kit, persistence, where }: AppView, box: App['act']['box']): KitRow[] {
  const row = (page: KitPage, name: string, value: string): KitRow => ({ href: `#/kit/${page}`, name, value });
  return [
    row('bow', say('kit.bow'), bowValue(kit)),
    { href: '#/known', name: say('known.title'), value: say('known.short') },
    row('shot-process', say('kit.shotProcess'), say('kit.steps', { n: kit.shotProcess.length })),
    row('sound', say('kit.sound'), soundValue(kit)),
    row('display', say('kit.display'), displayValue(kit)),
    row('controls', say('kit.controls'), controlsValue(kit)),
    row('camera', say('kit.camera'), kit.camera.on ? say('kit.on') : say('kit.off')),
    { href: '#/files', name: say('files.title'), value: say('files.short') },
    ...(box
      ? [{ href: '#/box', name: say('kit.boxRow'), value: box.link ? boxState(box.link) : say('kit.boxValue') }]
      : []),
    row('backup', say('backup.heading'), backupValue(kit)),
    row('stored', say('kit.kept'), where === 'disk' ? keptValue(persistence) : say('kit.notKeptShort')),
    row('safety', say('kit.safety'), say('kit.safetyString')),
  ];
}

function bowValue({ bow, hand, drawWeightLbf, units, ageBand }: Kit): string {
  const weight = drawWeightLbf === undefined ? say('kit.noWeight') : formatWeight(drawWeightLbf, units);
  return [say(`kit.${bow}`), say(`kit.${hand}Hand`), weight, ageBand === undefined ? say('kit.noAge') : '']
    .filter(Boolean)
    .join(' · ');
}

function soundValue({ soundLevel, voice, spoken, quiet }: Kit): string {
  if (soundLevel === 0) return say('kit.silent');
  const amount = say(`kit.spoken${spoken === 'least' ? 'Least' : spoken === 'most' ? 'Most' : 'Usual'}`);
  return [formatShare(soundLevel), say(`kit.${voice}`), amount, quiet ? say('kit.quietShort') : '']
    .filter(Boolean)
    .join(' · ');
}

function displayValue({ theme, viewing, units, language, layout }: Kit): string {
  const themes = { system: 'kit.asDevice', dark: 'kit.dark', light: 'kit.light', contrast: 'kit.contrast' } as const;
  const parts = [
    formatDistance(viewing.distanceM, units),
    viewing.flipped ? say('kit.flippedShort') : '',
    layout === 'numbers' ? say('kit.numbersFirst') : '',
    say(themes[theme]),
    language === undefined ? '' : languages[language],
  ];
  return parts.filter(Boolean).join(' · ');
}

function controlsValue({ keys, listens }: Kit): string {
  const begin = formatRow(keys.begin.slice(0, 3).map((code) => pressWords(code)));
  return [begin, listens.headset ? say('kit.headset') : '', listens.microphone ? say('kit.claps') : '']
    .filter(Boolean)
    .join(' · ');
}

function backupValue({ backup: { everyDays, lastAt } }: Kit): string {
  if (everyDays === undefined) return say('kit.off');
  const last = lastAt === undefined ? say('kit.neverMade') : say('kit.madeLast', { day: lastAt.slice(0, 10) });
  return `${say('kit.everyDays', { n: everyDays })} · ${last}`;
}

function keptValue(persistence: AppView['persistence']): string {
  return persistence === 'may be cleared' ? say('kit.mayClearShort') : say('kit.onDeviceShort');
}
