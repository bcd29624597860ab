import type { Told } from '@larderbook/haccp';
import type { InstrumentData, JudgedLimitData, MonitoringData, ReadingData, StatementData } from './entry-data';
import type { Instant, SheetData } from './sheet-data';

/** The fields are those of 9 CFR 417.5(a)(3) and (b). */
export type MonitoringLogData = {
  sheet: SheetData;
  /** The product of the plan that holds the control point. */
  product: string;
  period: { from: Instant; to: Instant };
  controlPoint: MonitoredControlPointData;
  instruments: InstrumentData[];
  /** Oldest first. Rows are read once and drawn as they come, so a year of them needs the memory of one page. */
  rows: Iterable<MonitoringRowData> | AsyncIterable<MonitoringRowData>;
  /** Includes direct observations of the monitoring. */
  reviews: StatementData[];
};

export type MonitoredControlPointData = {
  number?: string;
  name: string;
  critical: boolean;
  step?: string;
  hazard: string;
  /** When a limit changed within the period, both are given, and `what` says from when. */
  limits: Omit<JudgedLimitData, 'verdict' | 'deviation'>[];
  monitoring?: MonitoringData;
};

export type MonitoringRowData = MonitoredReadingData | JudgedCurveData | CheckNotDoneData;

export type MonitoredReadingData = ReadingData & {
  kind: 'reading';
  lot?: string;
  product?: string;
  initials: string;
  /** The limit copied when the reading was taken; printed where the head of the log has another. */
  limit: string;
  /** Only of a weighing: its target, and what it came to: "149.85 ppm on 37.7 lb of meat". */
  beside?: string[];
  /** A curve is judged as a whole, in a row of its own. */
  isOfCurve?: boolean;
  /** A struck row counts for nothing here. */
  struck?: 'voided' | 'corrected';
};

/** All readings of a lot at this control point are judged together. */
export type JudgedCurveData = {
  kind: 'curve';
  at: Instant;
  lot?: string;
  product?: string;
  limit: string;
  verdict: Told;
  /** Number of the deviation that answers it. */
  deviation?: string;
};

/** A check that nobody made is no pass. */
export type CheckNotDoneData = { kind: 'not done'; dueAt: Instant; lot?: string; product?: string; what: string };
