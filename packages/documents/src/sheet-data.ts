import type { Language } from '@larderbook/messages';

/** Milliseconds since 1970-01-01T00:00Z; printed in the establishment's time zone. */
export type Instant = number;

/** `at` is the moment stated; `enteredAt`, when the server kept it, is printed where it differs. */
export type Signed = { by: string; at: Instant; enteredAt?: Instant };

export type Paper = 'Letter' | 'A4';

export type EstablishmentData = {
  name: string;
  /** Absent for a shop without an inspector's number. */
  number?: string;
  /** On one line: "14 Mill Lane, Harrow Bridge". */
  address: string;
  /** IANA name: "America/Chicago". */
  timeZone: string;
  /** "Sep 4, 2025 2:05 pm" or "4 Sep 2025 14:05"; without it, Letter paper means US. */
  timeStyle?: 'US' | 'international';
};

/** The newest line when the sheet was printed; the paper pins it. */
export type LedgerHead = { sequence: number | bigint | string; hash: string };

export type SheetData = {
  establishment: EstablishmentData;
  paper: Paper;
  /** English when absent. */
  language?: Language;
  /** Also the creation date inside the file: the same data make the same bytes. */
  printed: Signed;
  /** Absent only before the first entry of an establishment. */
  ledgerHead?: LedgerHead;
};
