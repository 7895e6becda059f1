import type { en } from '../en/index.ts';
import { about } from './about.ts';
import { after } from './after.ts';
import { app } from './app.ts';
import { backup } from './backup.ts';
import { bench } from './bench.ts';
import { box } from './box.ts';
import { boxRound } from './box-round.ts';
import { boxTrouble } from './box-trouble.ts';
import { calendar } from './calendar.ts';
import { calls } from './calls.ts';
import { caution } from './caution.ts';
import { clash } from './clash.ts';
import { coach } from './coach.ts';
import { day } from './day.ts';
import { dose } from './dose.ts';
import { drill } from './drill.ts';
import { effort } from './effort.ts';
import { fault } from './fault.ts';
import { feel } from './feel.ts';
import { field } from './field.ts';
import { file } from './file.ts';
import { journal } from './journal.ts';
import { kit } from './kit.ts';
import { known } from './known.ts';
import { learn } from './learn.ts';
import { line } from './line.ts';
import { load } from './load.ts';
import { lost } from './lost.ts';
import { milestone } from './milestone.ts';
import { month } from './month.ts';
import { note } from './note.ts';
import { odd } from './odd.ts';
import { outlook } from './outlook.ts';
import { ownHold } from './own-hold.ts';
import { phase } from './phase.ts';
import { plan } from './plan.ts';
import { post } from './post.ts';
import { press } from './press.ts';
import { program } from './program.ts';
import { prompt } from './prompt.ts';
import { rack } from './rack.ts';
import { range } from './range.ts';
import { readiness } from './readiness.ts';
import { reason } from './reason.ts';
import { rep } from './rep.ts';
import { report } from './report.ts';
import { ribbon } from './ribbon.ts';
import { routine } from './routine.ts';
import { season } from './season.ts';
import { share } from './share.ts';
import { sight } from './sight.ts';
import { swap } from './swap.ts';
import { today } from './today.ts';
import { track } from './track.ts';
import { trend } from './trend.ts';
import { trouble } from './trouble.ts';
import { week } from './week.ts';
import { why } from './why.ts';

/** Every message in German. */
export const de: Readonly<Record<keyof typeof en, string>> = {
  ...calendar,
  ...calls,
  ...day,
  ...line,
  ...rep,
  ...feel,
  ...dose,
  ...outlook,
  ...odd,
  ...readiness,
  ...season,
  ...known,
  ...plan,
  ...sight,
  ...trend,
  ...week,
  ...program,
  ...phase,
  ...press,
  ...ribbon,
  ...effort,
  ...after,
  ...drill,
  ...learn,
  ...field,
  ...range,
  ...app,
  ...swap,
  ...today,
  ...month,
  ...backup,
  ...box,
  ...post,
  ...boxRound,
  ...boxTrouble,
  ...kit,
  ...coach,
  ...journal,
  ...load,
  ...lost,
  ...milestone,
  ...clash,
  ...file,
  ...report,
  ...prompt,
  ...rack,
  ...share,
  ...routine,
  ...fault,
  ...bench,
  ...trouble,
  ...note,
  ...track,
  ...ownHold,
  ...about,
  ...reason,
  ...caution,
  ...why,
};
