import { readFileSync } from 'node:fs';
import { parquetReadObjects } from 'hyparquet';
import ICAL from 'ical.js';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { run } from './run.ts';
import { trialFiles as files } from './trial-files.ts';
import { trialSurroundings } from './trial-surroundings.ts';

const { 'good.drill.json': program, 'j.json': journal } = files;

describe('check', () => {
  it('says of each file whether it is right, and where it is not', async () => {
    const around = trialSurroundings(files);
    expect(await run(['check', 'good.drill.json', 'bad.drill.json', 'j.json'], around)).toBe(1);
    const lines = around.printed().split('\n');
    expect(lines[0]).toBe('good.drill.json: a program file, all right');
    expect(lines[1]).toMatch(/^bad\.drill\.json:13:\d+: .*180/); // the hold is in line 13; the file page says 180 s at most
    expect(lines[2]).toBe('j.json: a journal file, all right');
  });

  it('reads standard input, and prints JSON for other programs', async () => {
    const around = trialSurroundings({ '-': 'nonsense' });
    expect(await run(['check', '--json', '-'], around)).toBe(1);
    expect(JSON.parse(around.printed())).toMatchObject([{ path: '-', faults: [{ line: 1 }] }]);
  });

  it('refuses a text that is not UTF-8, whose letters would be lost when it is written again', async () => {
    const latin1 = Uint8Array.from(program.replace('Five', 'Fünf'), (letter) => letter.charCodeAt(0));
    const around = trialSurroundings({ 'old.json': latin1, 'bom.json': `\ufeff${program}` });
    expect(await run(['format', '-w', 'old.json'], around)).toBe(1);
    expect(around.files.get('old.json')).toBe(latin1);
    expect(around.complained()).toBe('old.json: this is not UTF-8 text. Save it as UTF-8 and try again.\n');
    expect(await run(['check', '--json', 'old.json', 'bom.json'], around)).toBe(1);
    expect(JSON.parse(around.printed())).toMatchObject([{ path: 'old.json', faults: [{}] }, { faults: [] }]);
    expect(await run(['format', '--check', 'bom.json'], around)).toBe(1);
  });

  it('goes on after a file that is not there, and ends with the graver code', async () => {
    const around = trialSurroundings(files);
    expect(await run(['check', 'nowhere', 'good.drill.json'], around)).toBe(3);
    expect(around.printed()).toContain('nowhere: can’t be read (no such file)');
    expect(around.printed()).toContain('good.drill.json: a program file, all right');
  });
});

describe('format', () => {
  it('writes the canonical form, which it then finds', async () => {
    const around = trialSurroundings({ 'p.json': JSON.stringify(JSON.parse(program)) });
    expect(await run(['format', '--check', 'p.json'], around)).toBe(1);
    expect(await run(['format', '--write', 'p.json'], around)).toBe(0);
    expect(await run(['format', '--check', 'p.json'], around)).toBe(0);
  });

  it('keeps the address of the schema, and ends lines as the canonical form does', async () => {
    const text = program.replace('{', '{\n  "$schema": "../program-2.schema.json",').replaceAll('\n', '\r\n');
    const around = trialSurroundings({ 'p.json': text });
    expect(await run(['format', 'p.json'], around)).toBe(0);
    expect(around.printed()).toMatch(/^\{\n {2}"\$schema": "\.\.\/program-2\.schema\.json",\n/);
    expect(around.printed()).not.toContain('\r');
  });

  it('prints to standard output and leaves the file as it is', async () => {
    const text = JSON.stringify(JSON.parse(program));
    const around = trialSurroundings({ 'p.json': text });
    expect(await run(['format', 'p.json'], around)).toBe(0);
    expect(JSON.parse(around.printed()).title).toBe('Five short holds');
    expect(around.files.get('p.json')).toBe(text);
  });

  it('writes nothing of a wrong file, and says when a disk is full', async () => {
    const around = trialSurroundings(files);
    expect(await run(['format', '-w', 'bad.drill.json'], around)).toBe(1);
    expect(around.files.get('bad.drill.json')).toBe(files['bad.drill.json']);
    expect(await run(['format', 'good.drill.json', '-o', '/full/x'], around)).toBe(3);
    expect(around.complained()).toContain('/full/x: can’t be written (no space left)');
  });
});

describe('season files', () => {
  it('are checked, and written in their canonical form', async () => {
    const season = readFileSync(
      new URL('../../../tests/fixtures/season/v1-indoor-winter.season.json', import.meta.url),
      'utf8',
    );
    const around = trialSurroundings({ 's.season.json': season, 'bad.season.json': season.replace('2026', '20x6') });
    expect(await run(['check', 's.season.json'], around)).toBe(0);
    expect(around.printed()).toBe('s.season.json: a season file, all right\n');
    expect(await run(['check', 'bad.season.json'], around)).toBe(1);
    expect(await run(['format', '-w', 's.season.json'], around)).toBe(0);
    expect(await run(['format', '--check', 's.season.json'], around)).toBe(0);
  });
});

it('check says what will not happen as a season says, and calls the file valid', async () => {
  const days = Object.fromEntries(
    ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'].map((name) => [
      name,
      [{ title: 'A' }],
    ]),
  );
  const season = {
    format: 'larkhold/season',
    version: 1,
    title: 'W',
    blocks: [{ title: 'B', from: '2026-11-23', weeks: 4, days }],
  };
  const around = trialSurroundings({ 'w.season.json': JSON.stringify(season) });
  expect(await run(['check', 'w.season.json'], around)).toBe(0);
  expect(around.printed()).toContain('w.season.json: note: “B” has a session on all seven days.');
});

describe('today', () => {
  it('says the numbers of a program file', async () => {
    const around = trialSurroundings(files);
    expect(await run(['today', 'good.drill.json'], around)).toBe(0);
    const words = around.printed().replaceAll('\u00a0', ' ');
    expect(words).toContain('Five short holds, 2026-11-25');
    expect(words).toContain('Holds: 5 × 5 s');
    expect(words).toContain('Take care');
  });

  it('follows the season of a backup: what is due, and half a day at most on a rest day', async () => {
    const days = { wednesday: [{ title: 'Holding' }] };
    const season = {
      format: 'larkhold/season',
      version: 1,
      title: 'W',
      blocks: [{ title: 'B', from: '2026-11-23', weeks: 4, days }],
    };
    const backup = JSON.stringify({
      ...{
        format: 'larkhold/backup',
        version: 2,
        madeAt: '2026-11-24T20:00:00Z',
        kit: {},
        drills: [],
        days: [],
        weeks: [],
      },
      season: { document: season },
    });
    const ask = async (day: string) => {
      const around = trialSurroundings({ 'all.backup.json': backup });
      expect(await run(['today', '--json', 'all.backup.json', '--day', day], around)).toBe(0);
      return JSON.parse(around.printed()) as {
        programTitle: string;
        rest?: { rule: string };
        blocks: { sets: number; reps: number }[];
      };
    };
    const [due, rest] = [await ask('2026-11-25'), await ask('2026-11-26')];
    expect([due.programTitle, due.rest]).toEqual(['Holding', undefined]);
    expect(rest.rest?.rule).toBe('seasonRest');
    const around = trialSurroundings({ 'all.backup.json': backup });
    await run(['today', 'all.backup.json', '--day', '2026-11-26'], around);
    expect(around.printed()).toContain('Your season has no drill today; the next one is on 2 December.');
  });

  it('gives JSON, and styles text only for a person', async () => {
    const [plain, seen] = [trialSurroundings(files), trialSurroundings(files, true)];
    await run(['today', '--json', 'good.drill.json'], plain);
    expect(JSON.parse(plain.printed())).toMatchObject({ date: '2026-11-25', blocks: [{ reps: 5, holdMs: 5000 }] });
    await run(['today', 'good.drill.json'], seen);
    expect(seen.printed()).toContain('\u001b[1m');
  });

  it.each([
    [['today', 'good.drill.json', '--minutes', '0'], 2],
    [['today', 'good.drill.json', '--day', '2026-02-30'], 2],
    [['today', 'j.json'], 1],
    [['today', 'good.drill.json', '--program', 'Another'], 1],
    [['today', 'good.drill.json', '--program', 'Five short holds'], 0],
    [['simulate', 'good.drill.json', '--program', 'Another'], 1],
    [['tomorrow'], 2],
    [[], 2],
    [['--help'], 0],
  ])('%j ends with %i', async (args, code) => {
    expect(await run(args, trialSurroundings(files))).toBe(code);
  });
});

describe('a file that a command has no use for', () => {
  const commands = [
    ['today', '--json'],
    ['simulate', '--json'],
    ['cues', '-o', 'out'],
    ['format', '-w'],
    ['convert', '--to', 'csv'],
    ['sync', '--json'],
  ];
  const useful: Record<string, string> = { convert: 'j.json', sync: 'j.json' };
  it.each(commands)('%s says so, prints nothing and writes nothing', async (command, ...options) => {
    const others = ['good.drill.json', 'j.json'].filter((path) => path !== (useful[command!] ?? 'good.drill.json'));
    for (const path of [...others, 'bad.drill.json', 'empty', 'list']) {
      const around = trialSurroundings({ ...files, empty: '', list: '[]' });
      const before = new Map(around.files);
      expect([path, await run([command!, path, ...options], around)]).toEqual([path, 1]);
      expect(around.complained()).toContain(`${path}:`);
      expect(around.printed()).toBe('');
      expect(around.files).toEqual(before);
    }
  });

  it('is refused with the names of those that it can use', async () => {
    const around = trialSurroundings(files);
    await run(['today', 'j.json'], around);
    expect(around.complained()).toBe('j.json: this is a journal file. Expected: a backup file or a program file.\n');
  });
});

describe('cues', () => {
  it('writes a sound file as long as the drill', async () => {
    const around = trialSurroundings(files);
    expect(await run(['cues', 'good.drill.json', '-o', 'out.wav'], around)).toBe(0);
    const bytes = around.files.get('out.wav') as Uint8Array;
    expect(new TextDecoder().decode(bytes.subarray(0, 4))).toBe('RIFF');
    // 5 x (3 + 5 + 3) s and 4 x 20 s make 135 s; the time to get ready and the last cue's end come on top. 24 kHz, two bytes a sample.
    expect((bytes.length - 44) / 48_000).toBeGreaterThan(135);
    expect((bytes.length - 44) / 48_000).toBeLessThan(160);
  });
});

describe('convert', () => {
  it('writes CSV that a table reader reads', async () => {
    const around = trialSurroundings(files);
    expect(await run(['convert', 'j.json', '--to', 'csv'], around)).toBe(0);
    const { data } = Papa.parse<Record<string, string>>(around.printed(), { header: true, skipEmptyLines: true });
    expect(data).toMatchObject([{ date: '2026-11-24', 'prescribed reps': '5', 'duration seconds': '145', pain: 'no' }]);
  });

  it('writes Parquet that a Parquet reader reads', async () => {
    const around = trialSurroundings(files);
    expect(await run(['convert', 'j.json', '--to', 'parquet', '--table', 'days', '-o', 'days.parquet'], around)).toBe(
      0,
    );
    const bytes = around.files.get('days.parquet') as Uint8Array;
    const file = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer;
    const rows = await parquetReadObjects({ file });
    expect(rows).toMatchObject([{ date: '2026-11-24', 'blank bale arrows': 36, note: 'windy; =1+1', pain: null }]);
  });

  it('writes a calendar that a calendar reads', async () => {
    const around = trialSurroundings(files);
    expect(await run(['convert', 'j.json', '--to', 'ics', '-o', 'j.ics'], around)).toBe(0);
    const calendar = new ICAL.Component(ICAL.parse(around.files.get('j.ics') as string));
    expect(calendar.getAllSubcomponents('vevent')).toHaveLength(2);
  });

  const fixture = (path: string): string =>
    readFileSync(new URL(`../../../tests/fixtures/${path}`, import.meta.url), 'utf8');
  it.each(['journal/v2.journal.json', 'journal/v1.hand-over.json', 'backup/v2.backup.json'])(
    'makes a journal file of %s, with nothing in it that is this device’s own',
    async (path) => {
      const around = trialSurroundings({ 'in.json': fixture(path) });
      expect(await run(['convert', 'in.json', '--to', 'journal', '-o', 'out.json'], around)).toBe(0);
      const [before, after] = [JSON.parse(fixture(path)), JSON.parse(String(around.files.get('out.json')))];
      expect([after.format, after.kit, after.archer]).toEqual(['larkhold/journal', undefined, undefined]);
      expect(after.drills).toEqual(before.drills);
      expect(after.days).toEqual(before.days);
      expect(await run(['check', 'out.json'], around)).toBe(0);
      expect(around.printed()).toBe('out.json: a journal file, all right\n');
    },
  );

  it.each(['csv', 'ics', 'parquet', 'journal'])('makes %s of a journal with nothing in it', async (kind) => {
    const { drills: _drills, days: _days, ...nothing } = JSON.parse(journal);
    const around = trialSurroundings({ 'in.json': JSON.stringify({ ...nothing, drills: [], days: [] }) });
    expect(await run(['convert', 'in.json', '--to', kind], around)).toBe(0);
    expect(around.printed()).not.toBe('');
  });

  it('asks what to', async () => {
    const around = trialSurroundings(files);
    expect(await run(['convert', 'j.json'], around)).toBe(2);
    expect(around.complained()).toContain('--to');
  });
});

describe('simulate', () => {
  it('lists the planned days', async () => {
    const around = trialSurroundings(files);
    expect(await run(['simulate', 'good.drill.json', '--weeks', '2', '--days', '2', '--json'], around)).toBe(0);
    const rows = JSON.parse(around.printed());
    expect(rows.length).toBeGreaterThan(1);
    expect(rows[0]).toMatchObject({ week: '2026-W48' });
  });
});
