/** One way to do a block. `worth` ranks ways: time held first, then sets. */
export interface Choice {
  sets: number;
  reps: number;
  timeMs: number;
  worth: number;
}
