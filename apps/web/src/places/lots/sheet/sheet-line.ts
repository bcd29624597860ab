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

export type LineDeviation = Lot['deviations'][number] & { missed: Judged[]; correctiveAction?: string };

/** An entry that a later one corrects. */
export type Correction = {
  id: string;
  what: string;
  value: string;
  /** A corrected moment, which the sheet says on the shop's clock. */
  moment?: string;
  who: string;
  at: number;
  reason: string;
};

/** `at` is the moment it was taken (epoch ms). */
export type SheetLine = {
  id: string;
  kind: LineKind;
  at: number;
  /** Epoch ms by the server's clock. */
  enteredAt?: number;
  what: string;
  value?: string;
  who?: string;
  /** Its source, instrument and other small print. */
  notes: string[];
  flags: Flag[];
  judged: Judged[];
  controlPointId?: string;
  probe?: string;
  /** The oldest comes first. */
  corrects: Correction[];
  /** It never was: it stays on the sheet, struck through. */
  voided?: { reason: string; who: string };
  /** What a correction of it names, where that is not its id. */
  rowId?: string;
  deviation?: LineDeviation;
  /** A person said it was not of the core: struck through, and left out of every judgement. */
  isLeftOut?: boolean;
  /** The oldest comes first. */
  said?: string[];
  /** Only on this device so far; `refused` is the server's sentence. */
  kept?: { refused?: string };
};
