import type { CriticalLimit, LimitCondition, LimitKind, Source } from '@larderbook/haccp';
import { editorOf, type FiguresDraft } from './kinds/editors';

/** Where the figures come from, and what has to hold before they may be used. */
type Supported = { source: Source; conditions?: LimitCondition[] };

/** A limit while it is written, every number as typed. */
export type LimitDraft = FiguresDraft & Supported;

const noSource: Source = { citation: '', edition: '', confirmed: false };

/** A limit of one's own, with the usual longest gap between two readings already in it. */
export const emptyLimit = (kind: LimitKind): LimitDraft => ({ ...editorOf(kind).empty(), source: noSource });

/** A limit as it would be typed, to change its figures. */
export const draftOfLimit = (limit: CriticalLimit): LimitDraft => ({
  ...editorOf(limit.kind).draftOf(limit),
  source: limit.source,
  ...(limit.conditions && { conditions: limit.conditions }),
});
