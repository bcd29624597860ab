import type { Quantity } from '../quantity/quantity';

/** Doubt is never met: only `met` clears anything. */
export type VerdictKind = 'met' | 'missed' | 'undetermined';

/** A stretch between two figures of one unit: 130 → 80 °F. */
export type Span = { from: Quantity; to: Quantity };

/** An instant (epoch ms), shown by the clock of the shop. */
export type Moment = { at: number };

/** An exact figure, a stretch, an instant, how many, or what a person named. */
export type PlainFigure = Quantity | Span | Moment | number | string;
/** Words by their code, within others. */
export type PlainPhrase = { code: string; figures?: Readonly<Record<string, PlainFigure>> };
/** Words by their code, within a sentence: a stage, a doubt. */
export type Phrase = { code: string; figures?: Readonly<Record<string, PlainFigure | PlainPhrase>> };
/** What stands in a sentence about what was found. */
export type Figure = PlainFigure | Phrase;
export type Figures = Readonly<Record<string, Figure>>;
/** A sentence by its code. */
export type Coded = { code: string; figures?: Figures };

/** What was found, as data: whoever shows it puts it into words, and whoever compares it compares the code and the figures. */
export type Found = {
  finding: string;
  figures: Figures;
  /** The code of what was measured, where the finding alone does not tell it. */
  measure?: string;
};

/** A figure shown for information, or an assumption. */
export type Remark = Coded;

/** One stage or part of a limit. */
export type Part = Found & { kind: VerdictKind };

/** What goes on: the bound still to be reached, and the instants (epoch ms) that matter for it. */
export type Running = Coded & {
  /** By when it must be reached. */
  deadline?: number;
  /** When the stage began, in the worst case. */
  since?: number;
  /** While a temperature is held: when it has been held long enough, if it stays. */
  until?: number;
};

/** What became of a limit: a code and its figures, never a sentence. The limit itself stands in the plan. */
export type Verdict = Found & {
  kind: VerdictKind;
  /** Of a limit in stages: each of them, in order. */
  parts?: Part[];
  /** Further reasons why it is missed. */
  also?: Found[];
  /** Of a doubt: what would have been found but for it. */
  butFor?: Found & { parts?: Part[] };
  /** What to do now, where that is not what the finding asks for. */
  then?: Coded;
  /** The assumption taken where readings were thin, and figures shown for information only. */
  notes: Remark[];
  running?: Running;
  /** Of a chill that is missed and not finished: it goes on, and what is missed may grow. */
  still?: 'cooling';
  /** Of a series: the readings used, how many were left out, and the instants (epoch ms) of the first and the last. */
  restsOn?: { readings: number; leftOut: number; from: number; to: number };
  /** With several probes: the one whose verdict this is. */
  probe?: string;
  /**
   * The margin as a number in the limit's own small unit (ms, hundredths, …), negative when short: only to find the
   * nearest miss.
   */
  spare?: number;
};

/** What a judge of one kind finds, before the notes of the series are put to it. */
export type Judgement = Found & Pick<Verdict, 'kind' | 'parts' | 'running' | 'still' | 'spare'> & { notes?: Coded[] };
