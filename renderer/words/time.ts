/** When something was, as it is shown: day and time in the way of the maker's own machine. */

let shown: Intl.DateTimeFormat | null = null;

/**
 * "4 May 2026, 10:15". `iso`: a time as the host tells it. What the machine knows of days and months is read at the
 * first call: no start waits for it that shows no time.
 */
export function timeShown(iso: string): string {
  shown ??= new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });
  return shown.format(new Date(iso));
}
