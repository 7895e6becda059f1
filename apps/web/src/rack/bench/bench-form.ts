import type { Program } from '@larkhold/engine';
import type { Units } from '@larkhold/words';
import type { Draft } from './draft.ts';
import type { Json, Path } from './json-path.ts';
import type { PlacedProblems } from './problem-places.ts';

/** What the bench's fields are drawn from, and what they change. */
export interface BenchForm {
  draft: Draft;
  problems: PlacedProblems;
  /** The archer's. */
  units: Units;
  /** The draft as a program, while it is one. */
  program?: Program;
  /** What is being typed; shown as it was typed for as long as it means what the draft says. */
  typed?: { pointer: string; text: string };
  /** Sets one value. @param typed the text it was read from, where it was typed */
  set(path: Path, value: Json | undefined, typed?: string): void;
  /** Makes any other change of the draft. */
  change(draft: Draft): void;
}
