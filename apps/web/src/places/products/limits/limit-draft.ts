import type { substances } from '@larderbook/contracts';
import {
  decimalText,
  LONGEST_GAP_SECONDS,
  type AskedFor,
  type CoolingStage,
  type CountedAs,
  type CriticalLimit,
  type LimitCondition,
  type Measured,
  type PrintedTemperature,
  type Source,
  type StrictSigns,
} from '@larderbook/haccp';
import { durationText, noDuration, type DurationText } from './duration-text';
import type { LimitKind } from './limit-kinds';
import { draftOfProcess, emptyProcess, type ProcessDraft } from './process-draft';

/** A temperature as its source prints it, in one unit or in both, as typed. */
export type PrintedText = { '°F': string; '°C': string };
/** A bound of a range: a temperature, or a plain number. */
export type BoundText = PrintedText & { number: string };

/** `signs`: where the figure of a bound is itself outside. */
export type RangeDraft = {
  kind: 'range';
  measured: Measured;
  min: BoundText;
  max: BoundText;
  signs?: StrictSigns;
};
export type ConcentrationDraft = {
  kind: 'concentration';
  substance: (typeof substances)[number] | '';
  min: string;
  max: string;
  printed: string;
  countedAs?: CountedAs;
};
export type DwellDraft = { kind: 'dwell'; rows: { at: PrintedText; time: DurationText }[]; gap: DurationText };
export type StageDraft = { from: PrintedText; to: PrintedText; within: DurationText; counted: CoolingStage['counted'] };
export type CoolingDraft = { kind: 'cooling'; stages: StageDraft[]; startWithin: DurationText; gap: DurationText };
export type BandTimeDraft = {
  kind: 'bandTime';
  from: PrintedText;
  to: PrintedText;
  most: DurationText;
  gap: DurationText;
};
export type AttestationDraft = { kind: 'attestation'; statement: string; asks?: AskedFor };

/** A limit while it is written, every number as typed. */
export type LimitDraft = (RangeDraft | ConcentrationDraft | DwellDraft | CoolingDraft | BandTimeDraft | AttestationDraft | ProcessDraft) &
  Supported;
/** Where the figures come from, and what has to hold before they may be used. */
type Supported = { source: Source; conditions?: LimitCondition[] };

export const noPrinted: PrintedText = { '°F': '', '°C': '' };
const noBound: BoundText = { ...noPrinted, number: '' };
const noSource: Source = { citation: '', edition: '', confirmed: false };
export const noStage: StageDraft = {
  from: noPrinted,
  to: noPrinted,
  within: { amount: '', unit: 'h' },
  counted: 'stage',
};

/** A limit of one's own, with the usual patience between two readings already in it. */
export function emptyLimit(kind: LimitKind): LimitDraft {
  const source = noSource;
  switch (kind) {
    case 'range':
      return { kind, measured: 'temperature', min: noBound, max: noBound, source };
    case 'concentration':
      return { kind, substance: '', min: '', max: '', printed: '', source };
    case 'dwell':
      return {
        kind,
        rows: [{ at: noPrinted, time: noDuration }],
        gap: durationText(LONGEST_GAP_SECONDS.hold),
        source,
      };
    case 'cooling':
      return {
        kind,
        stages: [noStage],
        startWithin: noDuration,
        gap: durationText(LONGEST_GAP_SECONDS.cooling),
        source,
      };
    case 'bandTime':
      return {
        kind,
        from: noPrinted,
        to: noPrinted,
        most: { amount: '', unit: 'h' },
        gap: durationText(LONGEST_GAP_SECONDS.comeUp),
        source,
      };
    case 'attestation':
      return { kind, statement: '', source };
    default:
      return { ...emptyProcess(kind), source };
  }
}

/** A limit as it would be typed, to change its figures. */
export const draftOfLimit = (limit: CriticalLimit): LimitDraft => ({
  ...figuresOf(limit),
  ...(limit.conditions && { conditions: limit.conditions }),
});

function figuresOf(limit: CriticalLimit): LimitDraft {
  const { source } = limit;
  switch (limit.kind) {
    case 'range':
      return {
        kind: limit.kind,
        measured: limit.measured,
        min: boundText(limit.min),
        max: boundText(limit.max),
        signs: limit.signs,
        source,
      };
    case 'concentration':
      return {
        kind: limit.kind,
        substance: limit.substance,
        min: plain(limit.min, 2),
        max: limit.maxThousandths === undefined ? plain(limit.max, 2) : plain(limit.maxThousandths, 3),
        printed: limit.printed,
        countedAs: limit.countedAs,
        source,
      };
    case 'dwell':
      return {
        kind: limit.kind,
        rows: limit.rows.map(({ at, seconds }) => ({ at: printedText(at), time: durationText(seconds) })),
        gap: durationText(limit.longestGapSeconds),
        source,
      };
    case 'cooling':
      return {
        kind: limit.kind,
        startWithin: limit.startWithinSeconds === undefined ? noDuration : durationText(limit.startWithinSeconds),
        gap: durationText(limit.longestGapSeconds),
        source,
        stages: limit.stages.map(({ from, to, withinSeconds, counted }) => ({
          from: from ? printedText(from) : noPrinted,
          to: printedText(to),
          within: durationText(withinSeconds),
          counted,
        })),
      };
    case 'bandTime':
      return {
        kind: limit.kind,
        from: printedText(limit.from),
        to: printedText(limit.to),
        most: durationText(limit.maxSeconds),
        gap: durationText(limit.longestGapSeconds),
        source,
      };
    case 'attestation':
      return { kind: limit.kind, statement: limit.statement, asks: limit.asks, source };
    default:
      return { ...draftOfProcess(limit), source };
  }
}

const plain = (count: number | undefined, decimals: number): string => (count === undefined ? '' : decimalText(count, decimals));
const printedText = (printed: PrintedTemperature): PrintedText => ({
  '°F': plain(printed['°F'], 2),
  '°C': plain(printed['°C'], 2),
});
const boundText = (bound: PrintedTemperature | number | undefined): BoundText =>
  typeof bound === 'object' ? { ...printedText(bound), number: '' } : { ...noBound, number: plain(bound, 3) };
