import { say } from '@larkhold/words';
import type { CommanderError, HelpConfiguration } from 'commander';

/** @returns how help is written: commander's own words are English only, so ours stand in for them */
export function helpInWords(): HelpConfiguration {
  const titles: Readonly<Record<string, string>> = {
    ...{ 'Usage:': say('prompt.usage'), 'Options:': say('prompt.options'), 'Commands:': say('prompt.commands') },
  };
  return {
    styleTitle: (title) => titles[title] ?? title,
    optionDescription: ({ description, defaultValue }) =>
      defaultValue === undefined
        ? description
        : say('prompt.byDefault', { what: description, value: String(defaultValue) }),
  };
}

/**
 * Whether a call was wrong, and did not just ask for help or the version.
 * @param cause how commander ended
 * @returns true where something has to be said
 */
export function isMisuse({ message }: CommanderError): boolean {
  return message.startsWith('error: ');
}

/**
 * What is wrong with a call.
 * @param cause commander's error, whose names are in quotes
 * @returns one or two sentences
 */
export function misuseWords({ code, message }: CommanderError): string {
  const [, option, value, why] =
    /^error: option '(.*?)' argument '([\s\S]*)' is invalid\. ([\s\S]*)$/.exec(message) ?? [];
  if (option !== undefined) return say('prompt.badValue', { name: option, value: value ?? '', why: why ?? '' });
  const [name = '', other = ''] = [...message.matchAll(/'(.*?)'/g)].map(([, quoted = '']) => quoted);
  const wrong = wrongs.find((one) => code === `commander.${one}`) ?? 'other';
  const [, guess] = /Did you mean (?:one of )?(.*)\?\)/.exec(message) ?? [];
  const sentence = say('prompt.misused', { wrong, name, other });
  return guess === undefined ? sentence : `${sentence} ${say('prompt.didYouMean', { name: guess })}`;
}

const wrongs = [
  ...(['unknownOption', 'unknownCommand', 'missingArgument', 'optionMissingArgument'] as const),
  ...(['missingMandatoryOptionValue', 'conflictingOption', 'excessArguments'] as const),
];
