import { readFileSync } from 'node:fs';
import { formatInvite, formatPairing, parseInvite, parsePairing } from '@larkhold/box';
import {
  builtInPrograms,
  createSession,
  drillRecordSchema,
  findJsonFault,
  formatHandOver,
  formatJournal,
  formatProgram,
  formatQuickLine,
  formatSeason,
  layOut,
  parseCount,
  parseHandOver,
  parseJournal,
  parseProgram,
  parseQuickLine,
  parseSeason,
  prescribe,
} from '@larkhold/engine';
import {
  cutOff,
  formatBackup,
  kitSchema,
  lostJournal,
  parseBackup,
  readReplaced,
  runningDrillSchema,
  salvageKit,
  storedWitness,
} from '@larkhold/store';
import { createWords, localeOf } from '@larkhold/words';
import fc from 'fast-check';
import { deflateSync } from 'fflate';
import { readSteps } from '../../apps/web/src/kit/shot-steps.ts';
import { createDraftKeeper } from '../../apps/web/src/rack/bench/draft-keeper.ts';
import { readNumber } from '../../apps/web/src/rack/bench/read-number.ts';
import { pastedProgram } from '../../apps/web/src/rack/share/pasted-program.ts';
import { formatPayload, parsePayload } from '../../apps/web/src/rack/share/program-link.ts';
import { readIncoming } from '../../apps/web/src/shell/files/read-incoming.ts';
import { routeOf } from '../../apps/web/src/shell/routing.ts';
import { usualWeekStart } from '../../apps/web/src/shell/usual-week-start.ts';
import { damaged, hostileJson, hostileLine, misfilled } from './hostile-text.ts';

/** What a reader made of a text. `again` reads what the accepted value is written as, and writes it once more. */
export type Answer =
  | { ok: false; messages: readonly string[]; pointers?: readonly string[] }
  | { ok: true; value: unknown; written?: string; again?: (written: string) => string };

/** A reader of something that comes from outside. */
export interface Reader {
  name: string;
  hostile: fc.Arbitrary<string>;
  read(text: string): Answer;
}

const fixture = (path: string): string => readFileSync(new URL(`../fixtures/${path}`, import.meta.url), 'utf8');
const ladder = builtInPrograms.find(({ blocks }) => blocks.some((block) => block.ladder)) ?? builtInPrograms[0]!;
const programs = [
  ...['v1-weekday-holding', 'v2-weekday-holding', 'v2-failing-rep', 'v2-longest-hold'].map((name) =>
    fixture(`program/${name}.drill.json`),
  ),
  formatProgram(ladder),
];
const backups = ['v1', 'v1-notes', 'v1-milestones', 'v1-presses'].map((name) => fixture(`backup/${name}.backup.json`));
const journal = fixture('journal/v1.journal.json');
const handOver = fixture('journal/v1.hand-over.json');
const pairing = formatPairing({ secret: 'A'.repeat(43), address: 'https://club.invalid/box' });
const inviteText = JSON.stringify({
  ...{ coach: 'Ode', recipient: `age1${'q'.repeat(58)}`, path: 'a'.repeat(32), address: '/box' },
});
const base64url = (text: string): string => Buffer.from(text).toString('base64url');
const invitation = base64url(inviteText);
const anyOf = (texts: readonly string[]) => fc.constantFrom(...texts).chain(hostileJson);

const refusal = (problems: readonly { message: string; pointer?: string }[]): Answer => ({
  ok: false,
  messages: problems.map(({ message }) => message),
  pointers: problems.map(({ pointer }) => pointer ?? ''),
});
/** The second reading of something that was written must be good. */
function sure<T extends { ok: boolean }>(read: T): Extract<T, { ok: true }> {
  if (!read.ok) throw new Error(`what was written is not read again: ${JSON.stringify(read)}`);
  return read as Extract<T, { ok: true }>;
}

const toPayload = (text: string): string =>
  Buffer.from(deflateSync(new TextEncoder().encode(text))).toString('base64url');
const amount = fc.oneof(
  fc.nat(200).map(String),
  fc.double({ min: 0, max: 200, noNaN: true }).map((n) => n.toFixed(2)),
);
const time = fc.tuple(amount, fc.constantFrom('', ' s', 's', 'm', ' min', ':30')).map((parts) => parts.join(''));
/** Lines that are made as they should be, with numbers that may not be. */
const quickLines = fc
  .tuple(
    fc.tuple(fc.nat(25), fc.nat(70)).map(([sets, reps]) => `${sets}x${reps}`),
    time.map((text) => `hold ${text}`),
    fc.oneof(
      time.map((text) => `rest ${text}`),
      amount.map((text) => `rest ${text}x`),
    ),
    fc.subarray([
      ...['set rest 2m', 'draw 4', 'let-down 2.5 s', 'to set-up', 'add 4 lbf', 'both hands', 'power', 'draw 0.1'],
    ]),
  )
  .map(([first, hold, rest, more]) => [first, hold, rest, ...more].join(', '));
const kits = backups.map((text) => JSON.parse(text).kit as unknown);
/** Drills as they are kept, each at another moment. */
const runningDrills = [3, 12, 60, 200].map((seconds) => {
  const prescription = prescribe({ program: ladder, records: [], today: '2026-11-25' });
  const startedAt = '2026-11-25T06:30:00+01:00';
  const timeline = layOut(prescription);
  const session = createSession({ timeline, program: ladder.title, startedAt, newId: () => 'id-1' });
  session.send({ type: 'begin' }, 0);
  for (let nowMs = 0; nowMs <= seconds * 1000; nowMs += 1000) session.advance(nowMs);
  return JSON.parse(
    JSON.stringify({ recordId: 'id-1', program: ladder.title, prescription, snapshot: session.snapshot(), startedAt }),
  ) as unknown;
});
const keeper = (text: string) =>
  createDraftKeeper(() => ({ getItem: () => text, setItem: () => undefined, removeItem: () => undefined }));

/** Every reader of what comes from outside: files, links, what is typed or pasted, what lies in the browser's storage. */
export const readers: readonly Reader[] = [
  {
    name: 'program file',
    hostile: anyOf(programs),
    read(text) {
      const read = parseProgram(text);
      if (!read.ok) return refusal(read.problems);
      const again = (written: string) => formatProgram(sure(parseProgram(written)).program);
      return { ok: true, value: read.program, written: formatProgram(read.program), again };
    },
  },
  {
    name: 'season file',
    hostile: hostileJson(fixture('season/v1-indoor-winter.season.json')),
    read(text) {
      const read = parseSeason(text);
      if (!read.ok) return refusal(read.problems);
      const again = (written: string) => formatSeason(sure(parseSeason(written)).season);
      return { ok: true, value: read.season, written: formatSeason(read.season), again };
    },
  },
  {
    name: 'journal file',
    hostile: hostileJson(journal),
    read(text) {
      const read = parseJournal(text);
      if (!read.ok) return refusal(read.problems);
      const again = (written: string) => {
        const second = sure(parseJournal(written));
        return formatJournal(second.journal, second.madeAt);
      };
      return { ok: true, value: read.journal, written: formatJournal(read.journal, read.madeAt), again };
    },
  },
  {
    name: 'hand-over',
    hostile: hostileJson(handOver),
    read(text) {
      const read = parseHandOver(text);
      if (!read.ok) return refusal(read.problems);
      const again = (written: string) => formatHandOver(sure(parseHandOver(written)).handOver);
      return { ok: true, value: read.handOver, written: formatHandOver(read.handOver), again };
    },
  },
  {
    name: 'backup',
    hostile: anyOf(backups),
    read(text) {
      const read = parseBackup(text);
      if (!read.ok) return refusal(read.problems);
      const again = (written: string) => formatBackup(sure(parseBackup(written)).backup);
      return { ok: true, value: read.backup, written: formatBackup(read.backup), again };
    },
  },
  {
    name: 'any file that comes in',
    hostile: anyOf([...programs, ...backups, journal, handOver]),
    read(text) {
      const read = readIncoming(text);
      return read.kind === 'refused' ? refusal(read.problems) : { ok: true, value: read };
    },
  },
  {
    name: 'quick line',
    hostile: fc.oneof(
      quickLines,
      hostileLine(
        ['3x10 hold 30 rest 2x, set rest 2m', '1x5 hold 5 rest 20, draw 4, let-down 2, both hands, power, add 4 lbf'],
        [
          '3x10',
          'hold',
          'rest',
          '2x',
          '2m',
          '1:30',
          'set rest',
          'draw',
          'let down',
          'to set-up',
          'add',
          'both hands',
          ',',
        ],
      ),
    ),
    read(text) {
      const read = parseQuickLine(text);
      if (!read.ok) {
        const isInside = read.problems.every(({ start, end }) => start >= 0 && start <= end && end <= text.length);
        if (!isInside) throw new Error(`a problem lies outside of the line: ${JSON.stringify(read.problems)}`);
        return refusal(read.problems);
      }
      const again = (written: string) => formatQuickLine(sure(parseQuickLine(written)).block);
      return { ok: true, value: read.block, written: formatQuickLine(read.block), again };
    },
  },
  {
    name: 'link payload',
    hostile: fc.oneof(
      anyOf(programs).map(toPayload),
      fc.constantFrom(...programs.map(toPayload)).chain(damaged),
      fc.base64String({ maxLength: 400 }).map((text) => text.replace(/[+/=]/g, '-')),
      fc.string({ unit: 'binary', maxLength: 200 }),
    ),
    read(text) {
      const read = parsePayload(text);
      if (!read.ok) return { ok: false, messages: [read.message] };
      const again = (written: string) => formatPayload(sure(parsePayload(written)).program);
      return { ok: true, value: read.program, written: formatPayload(read.program), again };
    },
  },
  {
    name: 'pairing link',
    hostile: hostileLine(
      [pairing, formatPairing({ secret: 'A'.repeat(43) })],
      ['.', '..', '%', '-', '_', 'AAAA', '\u0000', '🏹'],
    ),
    read(text) {
      const read = parsePairing(text);
      if (!read.ok) return { ok: false, messages: ['no pairing'] };
      const again = (written: string) => formatPairing(sure(parsePairing(written)).pairing);
      return { ok: true, value: read.pairing, written: formatPairing(read.pairing), again };
    },
  },
  {
    name: 'coach’s invitation',
    hostile: fc.oneof(hostileLine([invitation], ['eyJ', '=', '%', '-', '_']), hostileJson(inviteText).map(base64url)),
    read(text) {
      const invite = parseInvite(text);
      if (!invite) return { ok: false, messages: ['This is no invitation.'] };
      const again = (written: string) => formatInvite(parseInvite(written) ?? invite);
      return { ok: true, value: invite, written: formatInvite(invite), again };
    },
  },
  {
    name: 'kit in storage',
    hostile: fc
      .oneof(fc.constantFrom(...kits).chain(misfilled), fc.jsonValue())
      .map((value) => JSON.stringify(value) ?? 'null'),
    read(text) {
      const { kit } = salvageKit(JSON.parse(text));
      const again = (written: string) => {
        const second = salvageKit(JSON.parse(written));
        if (second.damaged) throw new Error('a mended kit is not good');
        return JSON.stringify(kitSchema.parse(second.kit));
      };
      return { ok: true, value: kit, written: JSON.stringify(kit), again };
    },
  },
  {
    name: 'drill under way in storage',
    hostile: fc
      .oneof(fc.constantFrom(...runningDrills).chain(misfilled), fc.jsonValue())
      .map((value) => JSON.stringify(value)),
    read(text) {
      const running = runningDrillSchema.safeParse(JSON.parse(text));
      if (!running.success) return refusal(running.error.issues);
      const closed = cutOff(running.data, undefined).record;
      if (closed === undefined) return { ok: false, messages: ['nothing had begun, or nobody knows'] };
      return { ok: true, value: drillRecordSchema.parse(closed) };
    },
  },
  {
    name: 'draft in storage',
    hostile: fc.oneof(...programs.map((text) => hostileJson(`{"file":${text},"blockKeys":[0,1]}`))),
    read(text) {
      const draft = keeper(text).read('new');
      return draft ? { ok: true, value: draft } : { ok: false, messages: ['no draft'] };
    },
  },
  {
    name: 'shot process',
    hostile: hostileLine(['stance\nset-up\ndraw\nanchor\nhold'], ['stance', '\n', '\r\n', 'anchor', '\u2028']),
    read(text) {
      const read = readSteps(text);
      if (!read.ok) return { ok: false, messages: [read.message] };
      const again = (written: string) => sure(readSteps(written)).steps.join('\n');
      return { ok: true, value: read.steps, written: read.steps.join('\n'), again };
    },
  },
  {
    name: 'numbers that are typed',
    hostile: fc.oneof(
      hostileLine(['30', '2,5', '-0.75'], ['1', '.', ',', '-', '+', 'e', '٣']),
      fc.double().map(String),
    ),
    read(text) {
      const count = parseCount(text, 1000);
      if (!(Number.isInteger(count) && count >= 0 && count <= 1000)) throw new Error(`a count of ${count}`);
      const number = readNumber(text);
      if (typeof number === 'number' && !Number.isFinite(number)) throw new Error(`a number of ${number}`);
      return { ok: true, value: [count, number] };
    },
  },
  {
    name: 'address and paste',
    hostile: hostileLine(
      ['#/rack/5f0c1a52', '#/week/2026-W48/2026-11-25', `https://example.test/#/open/${toPayload('{}')}`],
      ['#/', 'week', '/', '%', '%E0%A4%A', '__proto__', '..', '//', 'open'],
    ),
    read(text) {
      return { ok: true, value: [routeOf(text), routeOf(`#${text}`), pastedProgram(text)] };
    },
  },
  {
    name: 'witness of a lost journal',
    hostile: hostileJson('{"drillCount":2000,"lastDay":"2026-11-24","at":"2026-11-25T06:00:00Z","device":"Phone"}'),
    read(text) {
      const storage = { getItem: () => text, setItem: () => undefined } as unknown as Storage;
      const witness = storedWitness(() => storage).read();
      if (!witness) return { ok: false, messages: ['no witness'] };
      const lost = lostJournal(witness, { drills: [] });
      if (witness.drillCount > 0 && lost?.drillCount !== witness.drillCount) throw new Error('a loss that is not told');
      return { ok: true, value: witness };
    },
  },
  {
    name: 'program that was replaced, in storage',
    hostile: hostileJson(
      JSON.stringify({
        ...{ title: 'Mine', programId: 'mine', at: '2026-11-25T06:00:00Z' },
        taken: {
          values: [{ table: 'opened', key: 'mine', before: { id: 'mine' }, after: { id: 'mine', program: {} } }],
        },
      }),
    ),
    read(text) {
      let kept: unknown;
      try {
        kept = JSON.parse(text);
      } catch {
        kept = text;
      }
      const replaced = readReplaced(kept, '2026-11-25T07:00:00Z', () => ({}));
      return replaced ? { ok: true, value: replaced } : { ok: false, messages: ['none'] };
    },
  },
  {
    name: 'language tag',
    hostile: hostileLine(
      ['C', 'en_US.UTF-8', 'de-AT', 'en-US-u-nu-arab', 'x-klingon', 'zh-Hant-HK'],
      ['-', '_', 'u', 'x', 'de', 'en', 'POSIX', '.', '@euro', '\u0000'],
    ),
    read(text) {
      const words = createWords(text);
      if (new Intl.NumberFormat(words.locale).format(1) === '') throw new Error('a number of nothing');
      return { ok: true, value: [words.language, localeOf(text), words.say('line.begin'), usualWeekStart(text)] };
    },
  },
  {
    name: 'place of a fault in JSON',
    hostile: fc.oneof(anyOf(backups), hostileJson(journal)),
    read(text) {
      const place = findJsonFault(text);
      let isJson = true;
      try {
        JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text);
      } catch {
        isJson = false;
      }
      if (isJson === (place !== undefined)) throw new Error(`JSON: ${isJson}, and a fault at ${JSON.stringify(place)}`);
      return place ? { ok: false, messages: [JSON.stringify(place)] } : { ok: true, value: true };
    },
  },
];
