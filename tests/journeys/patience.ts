/** How long a journey waits for what has to come, milliseconds: far longer than any machine takes, as nothing here measures how fast it is. */
export const PATIENCE_MS = 90_000;
