import '@larkhold/ui/tokens.css';
import { createCuePlayer } from '@larkhold/cues';
import { formatLocalInstant } from '@larkhold/runner';
import { askForPersistence, createSquadShelf, dumpDatabase, openStore, storedWitness } from '@larkhold/store';
import { createAppState } from './shell/app-state.ts';
import { folderPicker } from './shell/backup-folder.ts';
import { createBoxKeeper } from './shell/box-keeper.ts';
import { meetOnOccasions } from './shell/box-occasions.ts';
import './lark-app.ts';
import { createCoachPost } from './shell/coach-post.ts';
import { createDrillLock } from './shell/drill-lock.ts';
import { keepVersion } from './shell/newer-version.ts';
import { allowOwnScripts } from './shell/own-scripts.ts';
import { saveFile } from './shell/save-file.ts';
import { createSpeaker } from './shell/speak-language.ts';
import { usualWeekStart } from './shell/usual-week-start.ts';
import { watchDay } from './shell/watch-day.ts';

// The only place where the real clock, sound, store and screen meet.
allowOwnScripts();
const store = await openStore({ firstKit: { weekStart: usualWeekStart(navigator.language) } });
const today = (): string => formatLocalInstant(new Date()).slice(0, 10);
let tried: ReturnType<typeof createCuePlayer> | undefined;

let isDrilling = false;
const boxParts = {
  store,
  origin: location.href,
  now: () => store.instant(),
  isDrilling: () => isDrilling,
  report: (error: unknown) => reportError(error),
};
const box = await createBoxKeeper(boxParts);
const post = await createCoachPost(boxParts);

const state = createAppState({
  store,
  ...{ box, post, squad: createSquadShelf() },
  today,
  instant: () => store.instant(),
  newId: () => crypto.randomUUID?.() ?? newIdWithoutSecureContext(),
  saveFile,
  trySound(kind, { soundLevel, voice, quiet }) {
    const settings = { level: soundLevel, voice, quiet };
    tried ??= createCuePlayer(settings);
    tried.set(settings);
    void tried.unlock().then(() => tried?.say(kind));
  },
  askForPersistence,
  pickFolder: folderPicker(),
  report: (error) => reportError(error),
  dumpStored: () => dumpDatabase('larkhold'),
  witness: storedWitness(),
  drillLock: createDrillLock(),
});

// Say what nobody has caught: a fault that is only in the console is a change that may be lost unseen.
addEventListener('unhandledrejection', ({ reason }) => state.tell(reason));
addEventListener('error', ({ error }) => {
  if (error) state.tell(error); // a warning about layout carries none
});

const page = document.querySelector('lark-app');
const speak = createSpeaker({
  ...{ browserLanguage: navigator.language, document, storage: () => localStorage },
  onChange: () => void state.reload(), // the built-in programs are named in the new language
});
let latest: Parameters<Parameters<typeof state.subscribe>[0]>[0];
state.subscribe((app) => {
  latest = app;
  isDrilling = app.view.isDrilling;
  document.documentElement.dataset.theme = app.view.kit.theme;
  void speak(app.view.kit.language).then(() => {
    if (page) page.app = latest;
  });
});
await state.reload();

const both = { meet: (why?: 'online') => Promise.all([box.meet(why), post.meet()]) };
meetOnOccasions(both, {
  ...{ document, window },
  onDrilling: (hear) => state.subscribe(({ view }) => hear(view.isDrilling)),
});

watchDay(today, () => void state.reload());

keepVersion({
  onWaiting(use) {
    if (page) page.newer = use;
  },
  onTaken(reload) {
    // Also when another tab took the newer version: never in the middle of a drill.
    state.subscribe(({ view }) => {
      if (!view.isDrilling) reload();
    });
  },
});

window.launchQueue?.setConsumer(async ({ files }) => {
  const read = await Promise.allSettled(files.map((handle) => handle.getFile()));
  if (page) page.incoming = read.flatMap((one) => (one.status === 'fulfilled' ? [one.value] : [])); // one may be gone by now
});

/** `randomUUID` is missing where the origin is not secure (a tablet that opens a laptop's address). */
function newIdWithoutSecureContext(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6]! & 0x0f) | 0x40;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

declare global {
  interface Window {
    /** Files that an installed app was opened with; Chromium only. */
    launchQueue?: { setConsumer(consumer: (params: { files: FileSystemFileHandle[] }) => void): void };
  }
}
