import type { Flag, Judged, Lot } from '@larderbook/contracts';

export const lineKinds = ['start', 'input', 'weighing', 'reading', 'stage end', 'removal', 'packing', 'deviation', 'review', 'shipment'] as const;
export type LineKind = (typeof lineKinds)[number];

/** A deviation as it hangs under the line that missed the limit. */
export type LineDeviation = Lot['deviations'][number] & { correctiveAction?: string };

/** An entry that a later one corrects: struck through above the one that counts. */
export type Correction = { id: string; what: string; value: string; who: string; at: number; reason: string };

/** One line of the day sheet: what happened, on the moment it was taken (epoch ms). */
export type SheetLine = {
  id: string;
  kind: LineKind;
  at: number;
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
  deviation?: LineDeviation;
};
