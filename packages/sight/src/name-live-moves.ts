import { type FormPart, type FormReading, LIVE_MOVE_CM } from './judge-form.ts';

/** What has moved while a hold goes on, each part told once. */
export interface LiveMoves {
  /** Reads one look's numbers; gives those to report now. */
  look(form: readonly FormReading[]): FormReading[];
}

/**
 * Names what has moved in one hold while it goes on: what two looks in a row see, and one word for the draw arm.
 * @returns it, for one hold
 */
export function nameLiveMoves(): LiveMoves {
  let told: FormPart[] = [];
  let doubtful: FormPart[] = [];
  // The draw arm has one elbow.
  const isNews = (part: FormPart) =>
    !told.some((one) => one === part || (one !== 'bowShoulder' && part !== 'bowShoulder'));
  return {
    look(form) {
      // An elbow swings before it has dropped: of the draw arm it is a creep only where it clearly is, else the elbow.
      const found = form
        .filter(({ cm }) => cm >= LIVE_MOVE_CM)
        .map((one): FormReading => (one.part === 'creep' && !one.isClear ? { ...one, part: 'elbow' } : one));
      const fresh = found.filter(({ part }) => doubtful.includes(part) && isNews(part));
      doubtful = found.map(({ part }) => part);
      told = [...told, ...fresh.map(({ part }) => part)];
      return fresh;
    },
  };
}
