import type { Language } from './languages';

/** A shop on Letter paper reads "2:26 pm" and "Nov 29, 2026", every other one "14:26" and "29 Nov 2026". */
export type Voice = {
  language: Language;
  /** IANA name of the shop's time zone. */
  timeZone: string;
  timeStyle: 'US' | 'international';
};

/**
 * Spanish is that of the Americas with a decimal point, as plants from Mexico to Puerto Rico write figures. The day
 * stands before the month wherever that is usual.
 */
export const localeOf = ({ language, timeStyle }: Pick<Voice, 'language' | 'timeStyle'>): string =>
  ({ en: timeStyle === 'US' ? 'en-US' : 'en-GB', es: timeStyle === 'US' ? 'es-US' : 'es-MX' })[language];
