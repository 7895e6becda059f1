export { run } from './run.ts';
export { exitCodes, type Surroundings } from './surroundings.ts';
