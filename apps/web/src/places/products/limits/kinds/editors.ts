import type { CriticalLimit, LimitKind } from '@larderbook/haccp';
import { attestationEditor } from './attestation/attestation-editor';
import { bandTimeEditor } from './band-time/band-time-editor';
import { concentrationEditor } from './concentration/concentration-editor';
import { coolingEditor } from './cooling/cooling-editor';
import { degreeHoursEditor } from './degree-hours/degree-hours-editor';
import { dwellEditor } from './dwell/dwell-editor';
import type { Editor, EditorOfKind } from './editor';
import { figureEditor } from './figure/figure-editor';
import { freezingEditor } from './freezing/freezing-editor';
import { growthEditor } from './growth/growth-editor';
import { lethalityEditor } from './lethality/lethality-editor';
import { rangeEditor } from './range/range-editor';
import { weightLossEditor } from './weight-loss/weight-loss-editor';

const editors = {
  range: rangeEditor,
  figure: figureEditor,
  concentration: concentrationEditor,
  dwell: dwellEditor,
  cooling: coolingEditor,
  bandTime: bandTimeEditor,
  lethality: lethalityEditor,
  growth: growthEditor,
  degreeHours: degreeHoursEditor,
  weightLoss: weightLossEditor,
  freezing: freezingEditor,
  attestation: attestationEditor,
} satisfies { [K in LimitKind]: EditorOfKind<K> };

export type FiguresDraft = ReturnType<(typeof editors)[LimitKind]['empty']>;

export const editorOf = (kind: LimitKind): Editor<CriticalLimit, FiguresDraft> =>
  editors[kind] as unknown as Editor<CriticalLimit, FiguresDraft>;
