/**
 * Reads what was typed into a number's field.
 * @param typed any text; a comma counts as a decimal point
 * @returns the number; the text itself when it is not a number, so that it can be corrected; undefined when the field is empty
 */
export function readNumber(typed: string): number | string | undefined {
  const text = typed.trim();
  if (text === '') return undefined;
  return /^[-+]?(\d{1,9}([.,]\d{0,6})?|[.,]\d{1,6})$/.test(text) ? Number(text.replace(',', '.')) + 0 : text;
}
