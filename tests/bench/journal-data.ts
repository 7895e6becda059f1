import type { DrillRecord, Journal } from '@larkhold/engine';

const dayMs = 86_400_000;

/**
 * An invented journal: a drill and a day entry every day, a page every week. The same arguments give the same journal.
 * @param dayCount days from 2016-01-01 on.
 * @param repCount reps a drill.
 * @param device every third drill is of this device alone; the others are the same on all devices.
 * @returns the journal.
 */
export function createYears(dayCount: number, repCount: number, device: string): Journal {
  const journal: Journal = { drills: [], days: [], weeks: [] };
  for (let index = 0; index < dayCount; index += 1) {
    const at = new Date(Date.UTC(2016, 0, 1) + index * dayMs).toISOString();
    const date = at.slice(0, 10);
    journal.drills.push(createDrill(index % 3 === 0 ? `${device}-${index}` : `both-${index}`, at, repCount));
    journal.days.push({
      date,
      arrows: [{ kind: 'practice', count: 60 + (index % 90) }],
      feel: 1 + (index % 5),
      editedAt: at,
    });
    if (index % 7 === 0) {
      const year = 2016 + Math.floor(index / 364);
      const week = String(1 + (Math.floor(index / 7) % 52)).padStart(2, '0');
      journal.weeks.push({ week: `${year}-W${week}`, focus: `Focus of ${device}`, editedAt: at });
    }
  }
  return journal;
}

function createDrill(id: string, at: string, repCount: number): DrillRecord {
  return {
    id,
    program: 'Slow mornings',
    date: at.slice(0, 10),
    startedAt: at,
    endedAt: at,
    reps: Array.from({ length: repCount }, (_, rep) => ({
      block: 0,
      set: Math.floor(rep / 10),
      rep: rep % 10,
      hand: 'usual',
      prescribedMs: 30_000,
      heldMs: rep % 11 === 10 ? 21_400 : 30_000,
      outcome: rep % 11 === 10 ? 'short' : 'held',
    })),
    effort: 6,
    editedAt: at,
  };
}
