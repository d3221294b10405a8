/** Whether a window is (all but) the whole year, which has no first or last day to tell. */
export function spansYear(window: { readonly startDay: number; readonly endDay: number }): boolean {
  return (window.endDay - window.startDay + 365) % 365 >= 363;
}
