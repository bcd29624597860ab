/** One line of the table. Times are in milliseconds, rates in something a second; `unit` says which. */
export type Figure = {
  what: string;
  value: number;
  unit: string;
  /** The same work done as barely as it can be, measured in the same run. */
  beside?: { what: string; value: number };
  /** Milliseconds: half of the answers came within the first, all but one in a hundred within the second. */
  latency?: { p50: number; p99: number };
  note?: string;
};

/** What belongs under one heading. */
export type Measured = { title: string; figures: Figure[] };
