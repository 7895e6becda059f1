import '@larkhold/ui/tokens.css';
import { builtInPrograms, type Program, prescribe, programVersion } from '@larkhold/engine';
import '@larkhold/runner';
import { formatLocalInstant } from '@larkhold/runner';
import { programInWords, say } from '@larkhold/words';
import { allowOwnScripts } from '../shell/own-scripts.ts';
import { fileNameOf } from '../shell/save-file.ts';

// The page that says what Larkhold is. It has no store: the drill that runs here leaves nothing behind.
allowOwnScripts();

const short: Program = {
  format: 'larkhold/program',
  version: programVersion,
  title: say('about.emptyHands'),
  tool: 'band',
  blocks: [
    {
      ...{
        title: say('bench.titleHolding'),
        drill: 'free',
        sets: 1,
        reps: 2,
        draw: 2,
        hold: 4,
        letDown: 2,
        rest: { seconds: 4 },
      },
      ...{ letDownTo: 'rest', hand: 'usual', addedWeight: 0 },
    },
  ],
};

const drill = document.querySelector('lark-drill');
const said = document.querySelector('#said');
if (drill && said) {
  drill.programTitle = short.title;
  drill.prescription = prescribe({ program: short, records: [], today: formatLocalInstant(new Date()).slice(0, 10) });
  drill.addEventListener('lark-end', ({ detail: { record } }) => {
    const held = record.reps.filter(({ outcome }) => outcome === 'held').length;
    said.textContent = say('about.done', { held, reps: record.reps.length });
  });
}

document.querySelector('#files')?.append(
  ...builtInPrograms.map((program) => {
    const item = document.createElement('li');
    const link = document.createElement('a');
    link.href = `./programs/${fileNameOf(program.title)}.drill.json`;
    link.download = `${fileNameOf(program.title)}.drill.json`;
    const { title, about = '' } = programInWords(program);
    link.textContent = title;
    item.append(link, ` ${about}`);
    return item;
  }),
);
