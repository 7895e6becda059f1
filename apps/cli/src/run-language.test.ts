import { describe, expect, it } from 'vitest';
import { run } from './run.ts';
import { trialFiles } from './trial-files.ts';
import { trialSurroundings } from './trial-surroundings.ts';

describe('the language', () => {
  const said = async (args: string[], variables: Record<string, string> = {}) => {
    const around = trialSurroundings(trialFiles, false, variables);
    const code = await run(args, around);
    return { code, text: `${around.printed()}${around.complained()}`.replaceAll('\u00a0', ' ') };
  };

  it('is the one that is asked for, else that of the surroundings, else English', async () => {
    const check = ['check', 'good.drill.json'];
    const [english, german] = ['a program file, all right', 'eine Programmdatei, in Ordnung'];
    expect((await said(check)).text).toContain(english);
    expect((await said([...check, '--language', 'de'])).text).toContain(german);
    expect((await said(['--language', 'de-AT', ...check])).text).toContain(german);
    expect((await said(check, { LANG: 'de_DE.UTF-8' })).text).toContain(german);
    expect((await said(check, { LANG: 'de_DE.UTF-8', LC_ALL: 'C.UTF-8' })).text).toContain(english);
    expect((await said([...check, '--language', 'en'], { LANG: 'de_DE@euro' })).text).toContain(english);
    expect(await said([...check, '--language', 'tlh'])).toMatchObject({
      code: 2,
      text: expect.stringContaining('en, de'),
    });
  });

  it('is that of everything made from data: problems, numbers, reasons, cautions, plans, calendars', async () => {
    const german = { LC_ALL: 'de_DE.UTF-8' };
    expect((await said(['check', 'bad.drill.json'], german)).text).toContain('Erwartet: höchstens 180. Gefunden: 500.');
    const today = (await said(['today', 'good.drill.json'], german)).text;
    for (const words of [
      'Warum',
      'wie das Programm es sagt',
      'Achte darauf',
      'Lass eine gespannte Sehne ohne Pfeil niemals los',
    ])
      expect(today).toContain(words);
    expect((await said(['simulate', 'good.drill.json', '--weeks', '1'], german)).text).toContain(
      'Holds 1 × 5, 5 s halten',
    );
    expect((await said(['convert', 'j.json', '--to', 'ics'], german)).text).toContain('36 Pfeile');
    expect((await said(['today', 'j.json'], german)).text).toContain(
      'Das ist eine Tagebuchdatei. Erwartet: eine Sicherung',
    );
    expect((await said(['check', 'nowhere'], german)).text).toContain('lässt sich nicht lesen');
  });

  it('is that of help too, where it is asked for before or after it', async () => {
    const commands = ['check', 'format', 'today', 'cues', 'convert', 'simulate', 'sync'];
    for (const args of [[], ...commands.map((command) => [command])]) {
      const { code, text } = await said(['--language=de', ...args, '--help']);
      expect(code).toBe(0);
      expect(text).toMatch(/^Aufruf: larkhold/);
      expect(text).not.toMatch(/Usage|Options|Commands|display|output the|default|choices|\b(the|which|without|and)\b/);
    }
    expect((await said(['convert', '--help'], { LANG: 'de_AT' })).text.replace(/\s+/g, ' ')).toContain(
      'welche Tabelle, für csv und parquet: drills, reps, days (sonst: drills)',
    );
    expect((await said(['sync', '--help', '--language', 'en'], { LANG: 'de_AT' })).text).toMatch(
      /^Usage: larkhold sync/,
    );
  });

  it('is that of what a call got wrong', async () => {
    const wrong = async (...args: string[]) => {
      const { code, text } = await said(args, { LANG: 'de_DE' });
      expect([args, code]).toEqual([args, 2]);
      return text.trim();
    };
    const help = 'Versuch es mit --help.';
    expect(await wrong('check', 'j.json', '--foo')).toBe(`Die Option „--foo“ gibt es nicht. ${help}`);
    expect(await wrong('today', 'j.json', '--minute', '3')).toContain('Meinst du --minutes?');
    expect(await wrong('chek')).toBe(`Den Befehl „chek“ gibt es nicht. ${help} Meinst du check?`);
    expect(await wrong('check')).toBe(`„files“ fehlt. ${help}`);
    expect(await wrong('format', 'a', 'b')).toBe(`Es sind zu viele Angaben. ${help}`);
    expect(await wrong('convert', 'j.json')).toBe(`Die Option „--to <kind>“ fehlt. ${help}`);
    expect(await wrong('convert', 'j.json', '--to')).toBe(`Der Option „--to <kind>“ fehlt ein Wert. ${help}`);
    expect(await wrong('convert', 'j.json', '--to', "it's")).toBe(
      "„it's“ passt nicht zur Option „--to <kind>“. Erwartet: csv, ics, parquet, journal.",
    );
    expect(await wrong('today', 'j.json', '--minutes', '0')).toContain('Erwartet: eine ganze Zahl von 1 bis 1.440.');
    expect(await wrong('today', 'j.json', '--day', 'monday')).toContain('Erwartet: ein Kalendertag');
    expect(await wrong('format', 'j.json', '-w', '--check')).toContain('schließen sich aus');
  });
});
