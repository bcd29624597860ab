export type MassUnit = 'g' | 'kg' | 'oz' | 'lb';

export const MASSES: readonly MassUnit[] = ['kg', 'g', 'lb', 'oz'];

/** A weight as entered on the keypad: a decimal number with at most three decimals, and its unit. */
export type EnteredMass = { value: number; unit: MassUnit };
