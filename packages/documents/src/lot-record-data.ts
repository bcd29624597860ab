import type { AmendmentData, DeviationData, InstrumentData, JudgedData, JudgedLimitData, MonitoringData, ReadingData } from './entry-data';
import type { Instant, SheetData, Signed } from './sheet-data';

/** Everything about one lot, ready to print. Lists are printed in the order given: oldest first. */
export type LotRecordData = {
  sheet: SheetData;
  lot: LotData;
  inputs: LotInputData[];
  /** Absent until the meat has been weighed in. */
  meatBlock?: MeatBlockData;
  weighings: WeighingData[];
  /** In the order of the flow diagram. */
  controlPoints: ControlPointRecordData[];
  deviations: DeviationData[];
  packages: PackageData[];
  shipments: ShipmentData[];
  losses: LossData[];
  /** In, out and what is left unaccounted for; may be empty. */
  balance: BalanceLineData[];
  /** What was corrected or voided beside its readings and weighings: the field names the thing. Oldest first. */
  corrections?: AmendmentData[];
  /** Empty while nobody has reviewed the lot. */
  reviews: ReviewData[];
  /** What still stands in the way of clearing the lot, in sentences. */
  outstanding: string[];
  instruments: InstrumentData[];
};

export type LotData = {
  code: string;
  product: string;
  productCode?: string;
  /** "Cooked smoked sausage, version 3". */
  plan: string;
  formula?: string;
  started: Signed;
  /** Where it stands when printed, in words: "on hold", "cleared to ship". */
  stands: string;
  /** Why it stands there: "deviation 2025-014 is open". */
  because?: string;
  /** Further facts for the masthead, such as planned quantity, yield, use-by. */
  facts?: FactData[];
};
export type FactData = { label: string; value: string };

export type LotInputData = Signed & {
  item: string;
  supplier?: string;
  supplierLot?: string;
  /** Establishment number of the supplier. */
  establishmentNumber?: string;
  /** Lot code, when an earlier lot of the house goes in again. */
  reworkOf?: string;
  receivedAt?: Instant;
  taken: string;
  /** What was cut away of it. */
  trimmings?: string;
  flags?: string[];
  amendments?: AmendmentData[];
};

export type MeatBlockData = {
  /** As trimmed: "48.60 kg". */
  weight: string;
  /** How it came about: "52.10 kg taken less 3.50 kg of trimmings". */
  made?: string;
};

export type WeighingData = Signed & {
  ingredient: string;
  /** "contains 6.25 % sodium nitrite", supplier lot and the like. */
  detail?: string;
  /** What stood there before its delivery was corrected: printed struck through, beside what counts. */
  before?: { ingredient?: string; content?: string };
  target: string;
  weighed: string;
  /** "+ 0.4 g". */
  difference?: string;
  instrument?: string;
  /** Number of the control point at which it is judged: "CCP 1". */
  controlPoint?: string;
  /** What the weight was judged for, in ppm or against its tolerance. */
  judged: JudgedData[];
  flags?: string[];
  amendments?: AmendmentData[];
};

export type ControlPointRecordData = {
  /** "CCP 2". */
  number?: string;
  name: string;
  /** Critical control point, or prerequisite. */
  critical: boolean;
  step?: string;
  hazard: string;
  limits: JudgedLimitData[];
  monitoring?: MonitoringData;
  /** Set when it is judged by the weighings of the lot, which stand in a table of their own. */
  isWeighed?: boolean;
  readings: ReadingData[];
  figures?: FigureData[];
  /** What was found in its readings, how it is judged and what to do, in sentences. */
  found?: string[];
};

/** A temperature curve with its limits, all values in one unit. */
export type FigureData = {
  title: string;
  unit: '°C' | '°F';
  /** One per probe. */
  series: FigureSeriesData[];
  /** Drawn across the figure at their height; `band` is what the thermometer may be wrong by about it. */
  limits: { value: number; label: string; band?: [low: number, high: number] }[];
  /** Drawn as bands over the stretch of time they took. `to` absent: still running when printed. */
  stages: FigureStageData[];
  /** Where the curve passes a limit: the readings either side, and the estimates between them. */
  crossings?: FigureCrossingData[];
  /** What was read of what the product lies in. */
  surroundings?: FigurePointData[];
  /** While a stage runs: when it is expected at its bound. */
  arrival?: FigureArrivalData;
  /** What adds up on the same time axis, under the curve. */
  panel?: FigurePanelData;
};
export type FigurePointData = { at: Instant; value: number };
export type FigureCrossingData = {
  label: string;
  value: number;
  after: Instant;
  by: Instant;
  straight: Instant;
  chilled?: Instant;
};
export type FigureArrivalData = {
  label: string;
  value: number;
  earliest: Instant;
  best?: Instant;
  /** Absent where it may never be. */
  latest?: Instant;
  /** "on course", "at risk". */
  state: string;
};
export type FigurePanelData = { title: string; lines: { label: string; points: FigurePointData[] }[] };
export type FigureSeriesData = { label: string; points: FigurePointData[] };
export type FigureStageData = {
  /** "130 → 80 °F". */
  label: string;
  /** "1 h 12 min of 1 h 30 min". */
  spent?: string;
  from: Instant;
  to?: Instant;
  /** Instant by which the bound had to be reached. */
  deadline?: Instant;
  missed?: boolean;
};

export type PackageData = Signed & {
  code: string;
  count: number;
  /** Of one: "454 g". */
  net: string;
  total: string;
  /** A calendar day as printed on the label. */
  useBy?: string;
  label?: string;
};

export type ShipmentData = Signed & { customer: string; what: string; document?: string; note?: string };

export type LossData = Signed & { what: string; quantity: string; why?: string };

export type BalanceLineData = { label: string; quantity: string; share?: string; total?: boolean };

/** Pre-shipment review, 9 CFR 417.5(c). */
export type ReviewData = Signed & {
  cleared: boolean;
  /** What the reviewer put their name to. */
  statement: string;
  /** Signed by the only worker, who also made the records; the record says so. */
  soleWorker?: boolean;
  /** What took its clearance back, in a sentence. */
  takenBack?: string;
  /** Under the headings that the reviewer saw them under. */
  findings?: { heading: string; said: string[] }[];
};
