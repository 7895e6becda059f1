import { day } from './day.ts';
import { dose } from './dose.ts';
import { feel } from './feel.ts';
import { line } from './line.ts';
import { outlook } from './outlook.ts';
import { phase } from './phase.ts';
import { press } from './press.ts';
import { program } from './program.ts';
import { readiness } from './readiness.ts';
import { rep } from './rep.ts';
import { ribbon } from './ribbon.ts';
import { trend } from './trend.ts';
import { week } from './week.ts';

/** Every message in English. It is the master: the other languages have the same keys and parameters. */
export const en = {
  ...day,
  ...line,
  ...rep,
  ...feel,
  ...dose,
  ...outlook,
  ...readiness,
  ...trend,
  ...week,
  ...program,
  ...phase,
  ...press,
  ...ribbon,
} as const;
