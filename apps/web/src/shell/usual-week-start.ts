import type { WeekStart } from '@larkhold/engine';

/** What browsers know of a language's week; a method in newer ones, a property in older ones, nothing in some. */
interface KnowsWeek {
  getWeekInfo?(): { firstDay: number };
  weekInfo?: { firstDay: number };
}

/**
 * The day on which weeks begin where a language is spoken.
 * @param language BCP 47, such as 'en-US'
 * @returns Monday where the browser does not know
 * @source Unicode CLDR, week data, by the browser's own copy (ECMA-402, Intl.Locale info: 1 for Monday to 7 for Sunday)
 */
export function usualWeekStart(language: string): WeekStart {
  try {
    const locale: Intl.Locale & KnowsWeek = new Intl.Locale(language);
    const { firstDay } = locale.getWeekInfo?.() ?? locale.weekInfo ?? { firstDay: 1 };
    return firstDay === 7 ? 'sunday' : firstDay === 6 ? 'saturday' : 'monday';
  } catch {
    return 'monday';
  }
}
