/**
 * What is in a field now, for what listens to it.
 * @param event of a field
 * @returns its text, or the choice in a list; empty where the event is of something else
 */
export function typedIn({ target }: Event): string {
  const isField =
    target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement;
  return isField ? target.value : '';
}
