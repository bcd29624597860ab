import type { Told } from '@larderbook/haccp';
import type { InstrumentData, JudgedLimitData, MonitoringData, ReadingData, StatementData } from './entry-data';
import type { Instant, SheetData } from './sheet-data';

/** One control point over a period, with the fields of 9 CFR 417.5(a)(3) and (b). */
export type MonitoringLogData = {
  sheet: SheetData;
  /** What is made under the plan it stands in. */
  product: string;
  period: { from: Instant; to: Instant };
  controlPoint: MonitoredControlPointData;
  instruments: InstrumentData[];
  /** Oldest first. Read once and drawn as it comes, so a cursor over a year of rows needs the memory of one page. */
  rows: Iterable<MonitoringRowData> | AsyncIterable<MonitoringRowData>;
  /** Reviews and direct observations of the monitoring within the period. */
  reviews: StatementData[];
};

export type MonitoredControlPointData = {
  number?: string;
  name: string;
  critical: boolean;
  step?: string;
  hazard: string;
  /** In force during the period; when one changed within it, give both and say from when in `what`. */
  limits: Omit<JudgedLimitData, 'verdict' | 'deviation'>[];
  monitoring?: MonitoringData;
};

export type MonitoringRowData = MonitoredReadingData | JudgedCurveData | CheckNotDoneData;

export type MonitoredReadingData = ReadingData & {
  kind: 'reading';
  lot?: string;
  product?: string;
  initials: string;
  /** The limit copied into the reading when it was taken; printed where it is not the one at the head of the log. */
  limit: string;
  /** Of a weighing: its target, and what it came to on how much meat, as the lot stands: "149.85 ppm on 37.7 lb of meat". */
  beside?: string[];
  /** Part of a curve, which is judged as a whole in a row of its own. */
  isOfCurve?: boolean;
  /** Voided, or corrected out of this log: it stands struck through and counts for nothing here. */
  struck?: 'voided' | 'corrected';
};

/** A finished curve: all readings of a lot at this control point, judged together. */
export type JudgedCurveData = {
  kind: 'curve';
  /** When its last reading was taken. */
  at: Instant;
  lot?: string;
  product?: string;
  limit: string;
  verdict: Told;
  /** Number of the deviation that answers it. */
  deviation?: string;
};

/** A check that was due and that nobody made. It is not a pass. */
export type CheckNotDoneData = { kind: 'not done'; dueAt: Instant; lot?: string; product?: string; what: string };
