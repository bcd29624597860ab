export type RestrictedSubstance = 'sodium nitrite' | 'sodium nitrate' | 'sodium erythorbate' | 'phosphate';
