import {
  decimalText,
  degreeHoursFahrenheit,
  atMostOneLogGrown,
  salmonellaKilled,
  scaled,
  type CriticalLimit,
  type Degrees,
  type FigureUnit,
  type LethalitySet,
  type Species,
  type StrictSigns,
  type TemperatureUnit,
} from '@larderbook/haccp';
import { numberOf } from '../../../ui/keypad-text';
import { durationText, type DurationText } from './duration-text';
import type { PrintedText } from './limit-draft';

export type LethalityDraft = {
  kind: 'lethality';
  set: LethalitySet;
  log10: string;
  floor: PrintedText;
  authority: string;
  gap: DurationText;
};
export type GrowthDraft = { kind: 'growth'; species: Species | 'mixed or unknown'; log10: string; gap: DurationText };
export type ClassDraft = { top: string; isTopIncluded: boolean; most: string };
export type DegreeHoursDraft = {
  kind: 'degreeHours';
  unit: TemperatureUnit;
  base: string;
  pH: string;
  classes: ClassDraft[];
  gap: DurationText;
};
export type WeightLossDraft = { kind: 'weightLoss'; percent: string };
export type FreezingDraft = {
  kind: 'freezing';
  by: 'centre' | 'freezer';
  thickness: string;
  unit: 'in' | 'cm';
  gap: DurationText;
};
export type FigureDraft = {
  kind: 'figure';
  of: string;
  unit: FigureUnit;
  min: string;
  max: string;
  signs?: StrictSigns;
  printed?: string;
};

/** Limits on what a process does as a whole, every number as typed. */
export type ProcessDraft = LethalityDraft | GrowthDraft | DegreeHoursDraft | WeightLossDraft | FreezingDraft | FigureDraft;
type ProcessLimit = Extract<CriticalLimit, { kind: ProcessDraft['kind'] }>;

const TWO_HOURS: DurationText = { amount: '2', unit: 'h' };

/** A limit of one's own to begin with; what a guideline prints stands there already. */
export function emptyProcess(kind: ProcessDraft['kind']): ProcessDraft {
  switch (kind) {
    case 'lethality':
      return draftOfProcess(salmonellaKilled);
    case 'growth':
      return draftOfProcess(atMostOneLogGrown);
    case 'degreeHours':
      return draftOfProcess({ kind, ...degreeHoursFahrenheit });
    case 'weightLoss':
      return { kind, percent: '' };
    case 'freezing':
      return { kind, by: 'centre', thickness: '', unit: 'in', gap: TWO_HOURS };
    case 'figure':
      return { kind, of: '', unit: '%', min: '', max: '' };
  }
}

/** A limit as it would be typed, to change its figures. */
export function draftOfProcess(limit: ProcessLimit): ProcessDraft {
  switch (limit.kind) {
    case 'lethality':
      return {
        kind: limit.kind,
        set: limit.set,
        log10: decimalText(limit.log10, 2),
        authority: limit.authority,
        floor: { '°F': text(limit.floor['°F'], 2), '°C': text(limit.floor['°C'], 2) },
        gap: durationText(limit.longestGapSeconds),
      };
    case 'growth':
      return {
        kind: limit.kind,
        species: limit.species,
        log10: decimalText(limit.log10, 2),
        gap: durationText(limit.longestGapSeconds),
      };
    case 'degreeHours':
      return {
        kind: limit.kind,
        unit: limit.base.unit,
        base: text(limit.base.hundredths, 2),
        pH: text(limit.pH.thousandths, 3),
        gap: durationText(limit.longestGapSeconds),
        classes: limit.classes.map(({ top, isTopIncluded, most }) => ({
          top: text(top?.hundredths, 2),
          isTopIncluded,
          most: String(most),
        })),
      };
    case 'weightLoss':
      return { kind: limit.kind, percent: String(limit.percent) };
    case 'freezing':
      return {
        kind: limit.kind,
        by: limit.read.what,
        gap: durationText(limit.longestGapSeconds),
        thickness: limit.read.what === 'freezer' ? String(limit.read.thickness.value) : '',
        unit: limit.read.what === 'freezer' ? limit.read.thickness.unit : 'in',
      };
    case 'figure':
      return {
        kind: limit.kind,
        of: limit.of,
        unit: limit.unit,
        min: text(limit.min, 3),
        max: text(limit.max, 3),
        signs: limit.signs,
        printed: limit.printed,
      };
  }
}

/** The figures as the contract writes them; what is no number stays away and is asked for. */
export function figuresOfProcess(draft: ProcessDraft): object {
  switch (draft.kind) {
    case 'lethality':
      return {
        set: draft.set,
        log10: count(draft.log10, 2),
        authority: draft.authority,
        floor: { '°F': count(draft.floor['°F'], 2), '°C': count(draft.floor['°C'], 2) },
      };
    case 'growth':
      return { species: draft.species, log10: count(draft.log10, 2) };
    case 'degreeHours':
      return {
        base: degree(draft.base, draft.unit),
        pH: { thousandths: count(draft.pH, 3) },
        classes: draft.classes.map(({ top, isTopIncluded, most }) => ({
          top: top === '' ? undefined : degree(top, draft.unit),
          isTopIncluded,
          most: count(most, 0),
        })),
      };
    case 'weightLoss':
      return { percent: numberOf(draft.percent) };
    case 'freezing':
      return {
        read:
          draft.by === 'centre'
            ? { what: 'centre' }
            : { what: 'freezer', thickness: { value: numberOf(draft.thickness), unit: draft.unit } },
      };
    case 'figure':
      return {
        of: draft.of,
        unit: draft.unit,
        min: count(draft.min, 3),
        max: count(draft.max, 3),
        signs: draft.signs,
        printed: draft.printed,
      };
  }
}

const text = (amount: number | undefined, decimals: number): string => (amount === undefined ? '' : decimalText(amount, decimals));
const count = (typed: string, decimals: number): number | undefined => scaled(numberOf(typed) ?? NaN, decimals);
const degree = (typed: string, unit: TemperatureUnit): Degrees | { unit: TemperatureUnit } => {
  const hundredths = count(typed, 2);
  return hundredths === undefined ? { unit } : { hundredths, unit };
};
