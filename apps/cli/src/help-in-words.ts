import { say } from '@larkhold/words';
import type { CommanderError, HelpConfiguration } from 'commander';

/** @returns how help is written: commander's own words are English only, so ours replace them */
export function helpInWords(): HelpConfiguration {
  const [usage, options, commands] = [say('prompt.usage'), say('prompt.options'), say('prompt.commands')];
  return {
    styleTitle: (title) => ({ 'Usage:': usage, 'Options:': options, 'Commands:': commands })[title] ?? title,
    optionDescription: ({ description: what, defaultValue: value }) =>
      value === undefined ? what : say('prompt.byDefault', { what, value: String(value) }),
  };
}

/**
 * What is wrong with a call.
 * @param cause commander's error, whose names are in quotes
 * @returns one or two sentences
 */
export function misuseWords({ code, message }: CommanderError): string {
  const bad = /^error: option '(.*?)' argument '([\s\S]*)' is invalid\. ([\s\S]*)$/.exec(message);
  if (bad) return say('prompt.badValue', { name: bad[1] ?? '', value: bad[2] ?? '', why: bad[3] ?? '' });
  const [name = '', other = ''] = [...message.matchAll(/'(.*?)'/g)].map(([, quoted = '']) => quoted);
  const [, guess] = /Did you mean (?:one of )?(.*)\?\)/.exec(message) ?? [];
  // A code that the sentence does not know reads as `other`.
  const sentence = say('prompt.misused', { wrong: code.replace('commander.', '') as 'other', name, other });
  return guess === undefined ? sentence : `${sentence} ${say('prompt.didYouMean', { name: guess })}`;
}
