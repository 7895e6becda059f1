import { createWords, isSpoken, languages, say, useWords } from '@larkhold/words';
import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import { checkFiles } from './check-files.ts';
import { convertFile, targets } from './convert-file.ts';
import { formatFile } from './format-file.ts';
import { sayToday } from './say-today.ts';
import { simulateWeeks } from './simulate-weeks.ts';
import { CommandEnd, exitCodes, type Surroundings } from './surroundings.ts';
import { syncFile } from './sync-file.ts';
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
    useWords(createWords(localeOf(around)));
    await createCommands(around).parseAsync([...args], { from: 'user' });
    return exitCodes.good;
  } catch (cause) {
    if (cause instanceof CommanderError) return cause.exitCode === 0 ? exitCodes.good : exitCodes.usage;
    if (!(cause instanceof CommandEnd)) throw cause;
    if (cause.message !== '') around.complain(`${cause.message}\n`);
    return cause.code;
  }
}

function createCommands(around: Surroundings): Command {
  const root = new Command('larkhold')
    .description('Draw-and-hold training for archers, at a prompt. A file named - is standard input or output.')
    .version(VERSION)
    .option(
      '--language <tag>',
      'what results are said in, such as de; without it, as LC_ALL, LC_MESSAGES or LANG say',
      spoken,
    )
    .hook('preAction', (root) => {
      const { language } = root.opts<{ language?: string }>();
      if (language !== undefined) useWords(createWords(language));
    })
    .exitOverride()
    .configureOutput({ writeOut: (text) => around.print(text), writeErr: (text) => around.complain(text) })
    .addHelpText(
      'after',
      '\nExit codes: 0 done, 1 a file is not right, 2 the call is not understood, 3 a file cannot be reached.',
    );
  const command = (words: string, description: string): Command =>
    root.command(words).description(description).exitOverride();

  command(
    'check <files...>',
    'say whether program, season, journal, backup and hand-over files are right, and if not, what is wrong where',
  )
    .option('--json', 'findings as JSON')
    .action((paths: string[], options) => checkFiles(paths, options, around));

  command('format <file>', 'write a program or a season in its canonical form')
    .option('-o, --output <file>', 'where to', '-')
    .addOption(new Option('-w, --write', 'into the file itself').conflicts('check'))
    .option('--check', 'only say whether it is in this form')
    .action((path: string, options) => formatFile(path, options, around));

  withWish(command('today <file>', "a day's numbers and the reason for each, from a backup or a program"))
    .option('--json', 'the prescription as JSON')
    .action((path: string, options) => sayToday(path, options, around));

  withWish(command('cues <file>', "a day's drill as a sound file: tones, WAV, 16-bit mono"))
    .requiredOption('-o, --output <file>', 'where to')
    .action((path: string, options) => writeCues(path, options, around));

  command('convert <file>', 'a journal, backup or hand-over as another kind of file')
    .addOption(new Option('--to <kind>', 'what to').choices(targets).makeOptionMandatory())
    .addOption(
      new Option('--table <name>', 'for csv and parquet').choices(['drills', 'reps', 'days']).default('drills'),
    )
    .option('--notes', 'private notes go into a calendar too')
    .option('-o, --output <file>', 'where to', '-')
    .action((path: string, options) => convertFile(path, options, around));

  command('simulate <file>', 'the coming weeks, as if every hold were held')
    .option('--program <name>', "a program's id or title, from a backup")
    .option('--weeks <count>', 'how many', wholeNumber(1, 52), 8)
    .option('--days <count>', 'days with a drill in a week', wholeNumber(1, 7), 3)
    .option('--day <day>', 'the first day, such as 2026-11-25', calendarDay)
    .option('--json', 'the days as JSON')
    .action((path: string, options) => simulateWeeks(path, options, around));

  command(
    'sync <file>',
    "meet the archer's box: merge what other devices wrote into a journal or backup, and send what is in it",
  )
    .option('--secret-file <file>', 'where the pairing link is; without it, in LARKHOLD_BOX_SECRET')
    .option('--folder <folder>', 'a box in a folder')
    .option('--origin <address>', "the app's address, for a box on its own host")
    .option('--title <name>', 'what the other devices call this one', 'Prompt')
    .option('--json', 'what was done as JSON')
    .action((path: string, options) => syncFile(path, options, around));
  return root;
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
    .option('--program <name>', "a program's id or title, from a backup; without it, the one on the archer's line")
    .option('--minutes <count>', 'the time there is', wholeNumber(1, 1440))
    .option('--day <day>', 'which day, such as 2026-11-25; without it, today', calendarDay);
}

function wholeNumber(least: number, most: number) {
  return (text: string): number => {
    const value = Number(text);
    if (/^\d+$/.test(text) && value >= least && value <= most) return value;
    throw new InvalidArgumentError(`Expected a whole number from ${least} to ${most}.`);
  };
}

function calendarDay(text: string): string {
  const date = new Date(`${text}T12:00:00Z`);
  if (/^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text))
    return text;
  throw new InvalidArgumentError('Expected a calendar day such as 2026-11-25.');
}
