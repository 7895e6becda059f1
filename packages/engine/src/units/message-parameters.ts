/** How a day is written: 'Wednesday 25 November', the same with its year, 'Wed 25 Nov', that with its year, '25 November 2026', '25 November', 'Wed 25'. */
export type DayStyle = 'long' | 'longYear' | 'short' | 'shortYear' | 'year' | 'plain' | 'ofMonth';

/** How a message may write a number: `{name, number, seconds}`. Times are milliseconds, shares 0 to 1. */
export type NumberStyle = 'tenths' | 'seconds' | 'duration' | 'minutes' | 'share' | 'ratio' | 'impulse';

/**
 * What a message needs, read from its text by the type checker: `{title}` a string, `{count, number}` and
 * `{count, plural, …}` a number, `{day, date, short}` a calendar day, `{at, time}` an instant, `{hand, select, …}` one of the
 * words that the message lists.
 */
export type MessageParameters<Text extends string> = Text extends unknown ? ByName<InText<Text, [], never>> : never;

type ByName<Found extends Pair> = { [Name in Found[0]]: Extract<Found, [Name, unknown]>[1] };
type Pair = [name: string, value: unknown];
/** The plurals and selects that are open at a place, innermost first. */
type Open = { name: string; kind: string }[];

/** In words: the next brace begins a parameter, or ends the words of an option. */
type InText<Text extends string, Stack extends Open, Found extends Pair> = Text extends `${infer Before}{${infer After}`
  ? Before extends `${string}}${string}`
    ? LeaveOption<Text, Stack, Found>
    : Parameter<After, Stack, Found>
  : Text extends `${string}}${string}`
    ? LeaveOption<Text, Stack, Found>
    : Found;

type LeaveOption<Text extends string, Stack extends Open, Found extends Pair> = Text extends `${string}}${infer After}`
  ? InOptions<After, Stack, Found>
  : never;

type Parameter<
  Text extends string,
  Stack extends Open,
  Found extends Pair,
> = Text extends `${infer Head}}${infer After}`
  ? Head extends `${infer Name}, ${infer Kind}, ${string}{${string}`
    ? InOptions<
        OptionsOf<Text>,
        [{ name: Name; kind: Kind }, ...Stack],
        Kind extends 'select' ? Found : Found | [Name, number]
      >
    : InText<After, Stack, Found | Simple<Head>>
  : never;

type OptionsOf<Text extends string> = Text extends `${string}, ${string}, ${infer Options}` ? Options : never;

/** Between the options of a plural or a select. */
type InOptions<Text extends string, Stack extends Open, Found extends Pair> = Text extends `${infer Key}{${infer After}`
  ? Key extends `${string}}${string}`
    ? LeaveOptions<Text, Stack, Found>
    : InText<
        After,
        Stack,
        Stack extends [{ name: infer Name extends string; kind: 'select' }, ...Open] ? Found | [Name, Trim<Key>] : Found
      >
  : LeaveOptions<Text, Stack, Found>;

type LeaveOptions<Text extends string, Stack extends Open, Found extends Pair> = Text extends `${string}}${infer After}`
  ? Stack extends [unknown, ...infer Outer extends Open]
    ? InText<After, Outer, Found>
    : never
  : never;

type Simple<Head extends string> = Head extends `${infer Name}, number, ${NumberStyle}`
  ? [Name, number]
  : Head extends `${infer Name}, date, ${DayStyle}`
    ? [Name, string]
    : Head extends `${infer Name}, time` | `${infer Name}, date`
      ? [Name, string]
      : Head extends `${infer Name}, number`
        ? [Name, number]
        : Head extends `${infer Name}, ${string}`
          ? [Name, never]
          : [Head, string];

type Trim<Text extends string> = Text extends ` ${infer Rest}` | `${infer Rest} ` ? Trim<Rest> : Text;

type Both<Union> = (Union extends unknown ? (one: Union) => void : never) extends (all: infer All) => void
  ? All
  : never;

/** What a sentence needs; where the key may be one of several, what all of them need. */
export type ParametersOf<Messages, Key extends keyof Messages> = Both<MessageParameters<Messages[Key] & string>>;

/** The parameters as they follow a key: nothing where the sentence needs nothing. */
export type Given<Needs> = keyof Needs extends never ? [] : [parameters: Needs];
