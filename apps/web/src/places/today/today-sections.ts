import type { Deviation, LotHead, ReplyOf, showToday } from '@larderbook/contracts';

export type Today = ReplyOf<typeof showToday>;
type Instrument = Today['overdueInstruments'][number];
type PlanMissing = Today['plansMissing'][number];

/** Parts stand in the order in which they should be seen; empty ones are left out. */
export type TodaySections = {
  /** Shipped before its deviation was found. */
  recalls: Deviation[];
  onHold: { lot: LotHead; deviations: Deviation[] }[];
  /** Of deliveries, and any that no lot above stands for. */
  openDeviations: Deviation[];
  /** Condemned or called back, and not yet destroyed. */
  toDestroy: Today['toDestroy'];
  /** Those at risk first, then the one due first. */
  running: LotHead[];
  toReview: LotHead[];
  /** Cleared by rules that have changed since and now judge otherwise. */
  lookAgain: LotHead[];
  cleared: LotHead[];
  inWork: LotHead[];
  overdueInstruments: Instrument[];
  plansMissing: PlanMissing[];
};

/** Each thing stands once, where it matters most; only a running stage may be on hold too. */
export function todaySections(today: Today): TodaySections {
  const held = new Set(today.onHold.map(({ lotId }) => lotId));
  const recalled = new Set(today.recalls.map(({ deviationId }) => deviationId));
  const open = today.openDeviations.filter(({ deviationId }) => !recalled.has(deviationId));
  return {
    recalls: today.recalls,
    onHold: today.onHold.map((lot) => ({ lot, deviations: open.filter((deviation) => deviation.lot?.lotId === lot.lotId) })),
    openDeviations: open.filter(({ lot }) => !lot || !held.has(lot.lotId)),
    toDestroy: today.toDestroy,
    running: [...today.inWork, ...today.onHold].filter(({ running }) => running).sort(morePressing),
    toReview: today.toReview,
    lookAgain: today.cleared.filter(({ judgedOtherwise }) => judgedOtherwise.length > 0),
    cleared: today.cleared.filter(({ judgedOtherwise }) => judgedOtherwise.length === 0),
    inWork: today.inWork.filter(({ running }) => !running),
    overdueInstruments: today.overdueInstruments,
    plansMissing: today.plansMissing,
  };
}

/** What will be too late if nobody acts stands first, then what is due first. */
const morePressing = (a: LotHead, b: LotHead): number =>
  warned.indexOf(a.warning?.forecast.state) - warned.indexOf(b.warning?.forecast.state) || dueAt(a) - dueAt(b);
const warned: (NonNullable<LotHead['warning']>['forecast']['state'] | undefined)[] = ['will miss', 'at risk', undefined];

/** A stage without a deadline comes last. */
const dueAt = ({ running }: LotHead): number => running?.deadline ?? Number.POSITIVE_INFINITY;

export const isQuiet = (sections: TodaySections): boolean => Object.values(sections).every((part) => part.length === 0);
