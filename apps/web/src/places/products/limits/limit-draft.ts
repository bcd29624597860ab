import type { CriticalLimit, LimitCondition, LimitKind, Source } from '@larderbook/haccp';
import { editorOf, type FiguresDraft } from './kinds/editors';

/** `conditions` have to hold before the figures may be used. */
type Supported = { source: Source; conditions?: LimitCondition[] };

export type LimitDraft = FiguresDraft & Supported;

const noSource: Source = { citation: '', edition: '', confirmed: false };

/** The usual longest gap between two readings stands there already. */
export const emptyLimit = (kind: LimitKind): LimitDraft => ({ ...editorOf(kind).empty(), source: noSource });

export const draftOfLimit = (limit: CriticalLimit): LimitDraft => ({
  ...editorOf(limit.kind).draftOf(limit),
  source: limit.source,
  ...(limit.conditions && { conditions: limit.conditions }),
});
