/** Reps as they were logged. */
export const rep = {
  'rep.early': 'Let down {early, number, seconds} early: logged as {held, number, seconds}.',
  'rep.skipped': 'Skipped: logged as no hold.',
  'rep.unsure': 'Time was lost here: logged as unsure. You can correct it in the journal.',
} as const;
