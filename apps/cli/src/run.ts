import { createWords, isSpoken, languages, say, useWords } from '@larkhold/words';
import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import { checkFiles } from './check-files.ts';
import { convertFile, tables, targets } from './convert-file.ts';
import { formatFile } from './format-file.ts';
import { helpInWords, misuseWords } from './help-in-words.ts';
import { sayToday } from './say-today.ts';
import { simulateWeeks } from './simulate-weeks.ts';
import { CommandEnd, exitCodes, type Surroundings } from './surroundings.ts';
import { SECRET_VARIABLE, syncFile } from './sync-file.ts';
import { writeCues } from './write-cues.ts';

/** The version that `--version` prints. */
const VERSION = '0.2.0';

/**
 * Runs one command.
 * @param args what follows the program's name
 * @param around the surroundings
 * @returns the exit code
 */
export async function run(args: readonly string[], around: Surroundings): Promise<number> {
  try {
    useWords(createWords(asked(args) ?? localeOf(around)));
    await createCommands(around).parseAsync([...args], { from: 'user' });
    return exitCodes.good;
  } catch (cause) {
    if (cause instanceof CommanderError) {
      // Help and version end so too.
      if (cause.message.startsWith('error: ')) around.complain(`${misuseWords(cause)}\n`);
      return cause.exitCode === 0 ? exitCodes.good : exitCodes.usage;
    }
    if (!(cause instanceof CommandEnd)) throw cause;
    if (cause.message !== '') around.complain(`${cause.message}\n`);
    return cause.code;
  }
}

function createCommands(around: Surroundings): Command {
  const root = new Command('larkhold')
    .description(say('prompt.about'))
    .version(VERSION, '-V, --version', say('prompt.version'))
    .helpOption('-h, --help', say('prompt.help'))
    .helpCommand('help [command]', say('prompt.help'))
    .configureHelp(helpInWords())
    .option('--language <tag>', say('prompt.inLanguage'), spoken)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => around.print(text),
      writeErr: (text) => around.complain(text),
      outputError: () => undefined, // said by `run`, in words of ours
    })
    .addHelpText('after', `\n${say('prompt.exitCodes')}`);
  const command = (words: string, description: string): Command =>
    root.command(words).description(description).exitOverride();

  command('check <files...>', say('prompt.check'))
    .option('--json', say('prompt.findingsJson'))
    .action((paths: string[], options) => checkFiles(paths, options, around));

  command('format <file>', say('prompt.format'))
    .option('-o, --output <file>', say('prompt.output'), '-')
    .addOption(new Option('-w, --write', say('prompt.write')).conflicts('check'))
    .option('--check', say('prompt.onlyCheck'))
    .action((path: string, options) => formatFile(path, options, around));

  withWish(command('today <file>', say('prompt.today')))
    .option('--json', say('prompt.prescriptionJson'))
    .action((path: string, options) => sayToday(path, options, around));

  withWish(command('cues <file>', say('prompt.cues')))
    .requiredOption('-o, --output <file>', say('prompt.output'))
    .action((path: string, options) => writeCues(path, options, around));

  command('convert <file>', say('prompt.convert'))
    .requiredOption('--to <kind>', say('prompt.to', { kinds: targets.join(', ') }), oneOf(targets))
    .option('--table <name>', say('prompt.table', { tables: tables.join(', ') }), oneOf(tables), tables[0])
    .option('--notes', say('prompt.notes'))
    .option('-o, --output <file>', say('prompt.output'), '-')
    .action((path: string, options) => convertFile(path, options, around));

  command('simulate <file>', say('prompt.simulate'))
    .option('--program <name>', say('prompt.program'))
    .option('--weeks <count>', say('prompt.weeks'), wholeNumber(1, 52), 8)
    .option('--days <count>', say('prompt.days'), wholeNumber(1, 7), 3)
    .option('--day <day>', say('prompt.firstDay'), calendarDay)
    .option('--json', say('prompt.daysJson'))
    .action((path: string, options) => simulateWeeks(path, options, around));

  command('sync <file>', say('prompt.sync'))
    .option('--secret-file <file>', say('prompt.secretFile', { variable: SECRET_VARIABLE }))
    .option('--folder <folder>', say('prompt.folder'))
    .option('--origin <address>', say('prompt.origin'))
    .option('--title <name>', say('prompt.title'), say('prompt.device'))
    .option('--json', say('prompt.doneJson'))
    .action((path: string, options) => syncFile(path, options, around));
  return root;
}

/** The language that a call asks for, wherever in it; the help is in it too. A wrong one is complained of where options are read. */
function asked(args: readonly string[]): string | undefined {
  const at = args.findIndex((arg) => /^--language(=|$)/.test(arg));
  const tag = args[at]?.split('=')[1] ?? args[at + 1];
  return at >= 0 && tag !== undefined && isSpoken(tag) ? tag : undefined;
}

/** The language of the surroundings, as POSIX names it: `de_AT.UTF-8` is `de-AT`. */
function localeOf({ variable }: Surroundings): string {
  const named = variable('LC_ALL') || variable('LC_MESSAGES') || variable('LANG') || '';
  return named.replace(/[.@].*/, '').replace('_', '-');
}

function spoken(tag: string): string {
  if (isSpoken(tag)) return tag;
  throw new InvalidArgumentError(say('prompt.language', { tag, tags: Object.keys(languages).join(', ') }));
}

function withWish(command: Command): Command {
  return command
    .option('--program <name>', say('prompt.program'))
    .option('--minutes <count>', say('prompt.minutes'), wholeNumber(1, 1440))
    .option('--day <day>', say('prompt.day'), calendarDay);
}

function wholeNumber(least: number, most: number) {
  return (text: string): number => {
    const value = Number(text);
    if (/^\d+$/.test(text) && value >= least && value <= most) return value;
    throw new InvalidArgumentError(say('prompt.wholeNumber', { least, most }));
  };
}

function oneOf<Choice extends string>(choices: readonly Choice[]) {
  return (text: string): Choice => {
    const choice = choices.find((one) => one === text);
    if (choice !== undefined) return choice;
    throw new InvalidArgumentError(say('prompt.oneOf', { choices: choices.join(', ') }));
  };
}

function calendarDay(text: string): string {
  const date = new Date(`${text}T12:00:00Z`);
  if (/^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text))
    return text;
  throw new InvalidArgumentError(say('prompt.calendarDay'));
}
