export type MassUnit = 'g' | 'kg' | 'oz' | 'lb';

export const MASSES: readonly MassUnit[] = ['kg', 'g', 'lb', 'oz'];

/** At most three decimals. */
export type EnteredMass = { value: number; unit: MassUnit };
