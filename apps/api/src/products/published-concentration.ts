import {
  erythorbateComminuted,
  nitrateComminuted,
  nitriteComminuted,
  phosphate,
  type ConcentrationLimit,
  type RestrictedSubstance,
} from '@larderbook/haccp';

/** Without a plan, the maxima for chopped meat apply: most formulas are for it, and they are the lowest. */
export const publishedConcentration: Record<RestrictedSubstance, ConcentrationLimit> = {
  'sodium nitrite': nitriteComminuted,
  'sodium nitrate': nitrateComminuted,
  'sodium erythorbate': erythorbateComminuted,
  phosphate,
};
