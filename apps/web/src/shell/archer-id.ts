import type { App } from './app-context.ts';

/**
 * Who the archer is, for files in which several archers may meet. Whoever has no identity yet is given one, without a name.
 * @param app view and actions
 * @returns the archer's id
 */
export async function archerIdOf({ view, act }: App): Promise<string> {
  if (view.kit.archer) return view.kit.archer.id;
  const id = act.newId();
  await act.changeKit({ archer: { id, name: '' } });
  return id;
}
