/** For example "2026-03-02". */
export const dayIn = (timeZone: string, instant: Date): string =>
  new Intl.DateTimeFormat('sv-SE', { timeZone, year: 'numeric', month: '2-digit', day: '2-digit' }).format(instant);
