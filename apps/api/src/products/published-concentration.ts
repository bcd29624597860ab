import {
  erythorbateComminuted,
  nitrateComminuted,
  nitriteComminuted,
  phosphate,
  type ConcentrationLimit,
  type RestrictedSubstance,
} from '@larderbook/haccp';

/** Where a plan says nothing: chopped meat is what most formulas are for, and its maxima are the lowest. */
export const publishedConcentration: Record<RestrictedSubstance, ConcentrationLimit> = {
  'sodium nitrite': nitriteComminuted,
  'sodium nitrate': nitrateComminuted,
  'sodium erythorbate': erythorbateComminuted,
  phosphate,
};
