// Lives a year of three invented archers through prescribe, layOut, session and record; prints the tables of docs/simulation.md and draws
// docs/pictures/simulation.svg. Run with `node scripts/simulate-archers.mjs`; nothing needs to be built before.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { runnerImport } from 'vite';
import { root } from './prepare.mjs';

const conditions = ['@larkhold/source', 'module', 'node', 'development|production', 'import', 'default'];
const { module } = await runnerImport(`${root}tests/simulation/year-report.ts`, {
  ...{ root, configFile: false, logLevel: 'error', resolve: { conditions } },
  environments: { inline: { resolve: { conditions, noExternal: true } } },
});
const { tables, picture } = module.yearReport();
console.log(tables);
mkdirSync(`${root}docs/pictures`, { recursive: true });
writeFileSync(`${root}docs/pictures/simulation.svg`, picture);

// Between the two marks the page holds what was printed.
const page = `${root}docs/simulation.md`;
const [before, , after] = readFileSync(page, 'utf8').split(/(<!-- tables -->[\s\S]*<!-- end of tables -->)/);
if (after === undefined) throw new Error('docs/simulation.md has no place for its tables');
writeFileSync(page, `${before}<!-- tables -->\n\n${tables}\n<!-- end of tables -->${after}`);
