import type { AmendmentData, DeviationData, InstrumentData, JudgedData, JudgedLimitData, MonitoringData, ReadingData } from './entry-data';
import type { Instant, SheetData, Signed } from './sheet-data';

/** Lists are printed in the order given, oldest first. */
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
  /** May be empty. */
  balance: BalanceLineData[];
  /** Readings and weighings carry their own. The field names the thing; oldest first. */
  corrections?: AmendmentData[];
  /** Empty while nobody has reviewed the lot. */
  reviews: ReviewData[];
  /** Sentences: what still keeps the lot from being cleared. */
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
  /** In words, when printed: "on hold", "cleared to ship". */
  stands: string;
  /** "deviation 2025-014 is open". */
  because?: string;
  /** Further facts, such as yield or use-by. */
  facts?: FactData[];
};
export type FactData = { label: string; value: string };

export type LotInputData = Signed & {
  item: string;
  supplier?: string;
  supplierLot?: string;
  establishmentNumber?: string;
  /** Code of the earlier lot of the house. */
  reworkOf?: string;
  receivedAt?: Instant;
  taken: string;
  trimmings?: string;
  flags?: string[];
  amendments?: AmendmentData[];
};

export type MeatBlockData = {
  /** "48.60 kg". */
  weight: string;
  /** "52.10 kg taken less 3.50 kg of trimmings". */
  made?: string;
};

export type WeighingData = Signed & {
  ingredient: string;
  /** "contains 6.25 % sodium nitrite", or the supplier's lot. */
  detail?: string;
  /** Printed struck through, after a correction of the delivery. */
  before?: { ingredient?: string; content?: string };
  target: string;
  weighed: string;
  /** "+ 0.4 g". */
  difference?: string;
  instrument?: string;
  /** "CCP 1". */
  controlPoint?: string;
  /** In ppm, or against its tolerance. */
  judged: JudgedData[];
  flags?: string[];
  amendments?: AmendmentData[];
};

export type ControlPointRecordData = {
  /** "CCP 2". */
  number?: string;
  name: string;
  /** False for a prerequisite. */
  critical: boolean;
  step?: string;
  hazard: string;
  limits: JudgedLimitData[];
  monitoring?: MonitoringData;
  /** The weighings of the lot judge it and stand in a table of their own. */
  isWeighed?: boolean;
  readings: ReadingData[];
  figures?: FigureData[];
  /** Sentences: what was found in the readings, how it is judged, what to do. */
  found?: string[];
};

/** All values are in one unit. */
export type FigureData = {
  title: string;
  unit: '°C' | '°F';
  series: FigureSeriesData[];
  /** `band` is what the thermometer may be wrong by. */
  limits: { value: number; label: string; band?: [low: number, high: number] }[];
  /** A stage without `to` was still running when printed. */
  stages: FigureStageData[];
  /** The readings either side of a limit, and estimates of when the curve passed it. */
  crossings?: FigureCrossingData[];
  /** Readings of the surroundings. */
  surroundings?: FigurePointData[];
  /** Only while a stage runs. */
  arrival?: FigureArrivalData;
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
  /** Absent where it may never arrive. */
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
  deadline?: Instant;
  missed?: boolean;
};

export type PackageData = Signed & {
  code: string;
  count: number;
  /** Of one package: "454 g". */
  net: string;
  total: string;
  /** A calendar day as printed on the label. */
  useBy?: string;
  label?: string;
};

export type ShipmentData = Signed & { customer: string; what: string; document?: string; note?: string };

export type LossData = Signed & { what: string; quantity: string; why?: string };

export type BalanceLineData = { label: string; quantity: string; share?: string; total?: boolean };

/** 9 CFR 417.5(c). */
export type ReviewData = Signed & {
  cleared: boolean;
  statement: string;
  /** The only worker signed, who also made the records; the record says so. */
  soleWorker?: boolean;
  /** A sentence: what took the clearance back. */
  takenBack?: string;
  /** The headings are those the reviewer saw. */
  findings?: { heading: string; said: string[] }[];
};
