import type { Quantity } from '../quantity/quantity';

/** Doubt is never met: only `met` clears anything. */
export type VerdictKind = 'met' | 'missed' | 'undetermined';

/** 130 → 80 °F. */
export type Span = { from: Quantity; to: Quantity };

/** Epoch ms, shown by the clock of the shop. */
export type Moment = { at: number };

export type PlainFigure = Quantity | Span | Moment | number | string;
export type PlainPhrase = { code: string; figures?: Readonly<Record<string, PlainFigure>> };
/** Words within a sentence: a stage, a doubt. */
export type Phrase = { code: string; figures?: Readonly<Record<string, PlainFigure | PlainPhrase>> };
export type Listed = (string | Quantity | Phrase)[];
export type Figure = PlainFigure | Phrase | Listed;
export type Figures = Readonly<Record<string, Figure>>;
export type Coded = { code: string; figures?: Figures };

/** Data: shown in the reader's words, compared by code and figures. */
export type Found = {
  finding: string;
  figures: Figures;
  /** Where the finding does not tell what was measured. */
  measure?: string;
};

/** For information, or an assumption. */
export type Remark = Coded;

export type Part = Found & { kind: VerdictKind };

/** Bound still to be reached, and its instants (epoch ms). */
export type Running = Coded & {
  deadline?: number;
  /** In the worst case. */
  since?: number;
  /** The end of a hold, if the temperature stays. */
  until?: number;
};

/** Never a sentence. The limit itself is in the plan. */
export type Verdict = Found & {
  kind: VerdictKind;
  parts?: Part[];
  also?: Found[];
  /** What would be found without the doubt. */
  butFor?: Found & { parts?: Part[] };
  /** Where it differs from what the finding asks for. */
  then?: Coded;
  /** Assumptions for thin readings, and figures for information. */
  notes: Remark[];
  running?: Running;
  /** A missed chill goes on: what is missed may grow. */
  still?: 'cooling';
  /** Of a series; `from` and `to` in epoch ms. */
  restsOn?: { readings: number; leftOut: number; from: number; to: number };
  probe?: string;
  /** In the limit's own small unit (ms, hundredths, …), negative when short: only to find the nearest miss. */
  spare?: number;
};

/** Of one kind, before the notes of the series. */
export type Judgement = Found & Pick<Verdict, 'kind' | 'parts' | 'running' | 'still' | 'spare'> & { notes?: Coded[] };
