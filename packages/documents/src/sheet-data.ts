import type { Language } from '@larderbook/messages';

/** Milliseconds since 1970-01-01T00:00Z; printed in the establishment's time zone. */
export type Instant = number;

/**
 * Who did something, and when: every signature, entry and statement on paper carries both. `enteredAt` is when the
 * server kept it; it is printed too where it is another moment than the one that is stated.
 */
export type Signed = { by: string; at: Instant; enteredAt?: Instant };

export type Paper = 'Letter' | 'A4';

export type EstablishmentData = {
  name: string;
  /** The number its inspector knows it by; absent for a shop that has none. */
  number?: string;
  /** On one line: "14 Mill Lane, Harrow Bridge". */
  address: string;
  /** IANA name: "America/Chicago". */
  timeZone: string;
  /** "Sep 4, 2025 2:05 pm" or "4 Sep 2025 14:05"; by the paper when absent (Letter: US). */
  timeStyle?: 'US' | 'international';
};

/** The newest line of the ledger when the sheet was printed; the paper pins it. */
export type LedgerHead = { sequence: number | bigint | string; hash: string };

/** What stands on every sheet, whatever it records. */
export type SheetData = {
  establishment: EstablishmentData;
  paper: Paper;
  /** In which language the paper is told; English when absent. */
  language?: Language;
  /** Also the creation date inside the file: the same data printed twice is the same file, byte for byte. */
  printed: Signed;
  /** Absent only before the first entry of an establishment. */
  ledgerHead?: LedgerHead;
};
