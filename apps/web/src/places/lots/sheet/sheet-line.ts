import type { Flag, Judged, Lot } from '@larderbook/contracts';

export const lineKinds = [
  'start',
  'input',
  'weighing',
  'reading',
  'so far',
  'stage end',
  'removal',
  'packing',
  'deviation',
  'review',
  'shipment',
  'correction',
  'kept',
] as const;
export type LineKind = (typeof lineKinds)[number];

/**
 * A deviation as it hangs under the line at which it was opened: with what was missed, and what the plan says to do.
 */
export type LineDeviation = Lot['deviations'][number] & { missed: Judged[]; correctiveAction?: string };

/** An entry that a later one corrects: struck through above the one that counts. */
export type Correction = {
  id: string;
  what: string;
  value: string;
  /** A moment that was corrected, which the sheet says on the clock of the shop. */
  moment?: string;
  who: string;
  at: number;
  reason: string;
};

/** One line of the day sheet: what happened, on the moment it was taken (epoch ms). */
export type SheetLine = {
  id: string;
  kind: LineKind;
  at: number;
  /** When it was entered, by the server's clock. */
  enteredAt?: number;
  what: string;
  value?: string;
  who?: string;
  /** Where it came from, with which instrument, and other small print. */
  notes: string[];
  flags: Flag[];
  judged: Judged[];
  controlPointId?: string;
  probe?: string;
  /** Oldest first; each with the reason for which it was replaced. */
  corrects: Correction[];
  /** It never was: it stays on the sheet, struck through. */
  voided?: { reason: string; who: string };
  /** The row that a correction of it names, where that is not its id. */
  rowId?: string;
  deviation?: LineDeviation;
  /** Was not of the core, as a person said: struck through, and left out of every judgement. */
  isLeftOut?: boolean;
  /** What people said of it, oldest first. */
  said?: string[];
  /** Only on this device so far; `refused` in the server's sentence. */
  kept?: { refused?: string };
};
