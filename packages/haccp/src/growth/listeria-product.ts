/** Chilled, packed, ready to eat. An absent figure counts as none. */
export type ListeriaProduct = {
  /** 100 × salt ÷ (salt + moisture), % */
  waterPhaseSalt: number;
  pH: number;
  /** As sold, ppm; not ingoing. */
  nitritePpm?: number;
  /** Smoke phenols, ppm. */
  phenolsPpm?: number;
  /** Dissolved, ppm; none in a vacuum pack. */
  carbonDioxidePpm?: number;
  /** In the water phase, ppm. */
  lacticPpm?: number;
  aceticPpm?: number;
  diacetatePpm?: number;
};

export type ListeriaFactors = {
  celsius: number;
  waterActivity: number;
  pH: number;
  phenolsPpm: number;
  nitritePpm: number;
  carbonDioxidePpm: number;
  /** Undissociated, mM. */
  lactic: number;
  acetic: number;
  diacetate: number;
};

const MOLAR = { lactic: 90.08, acetic: 60.05, diacetate: 119.1 } as const;
/** One of the two copies read gives 4.8 for diacetate; 4.76 leaves less of it undissociated, which errs high. */
const PKA = { lactic: 3.86, acetic: 4.76, diacetate: 4.76 } as const;

/** Of a brine of salt alone. @param salt water-phase salt, % */
export const waterActivity = (salt: number): number => 1 - 0.0052471 * salt - 0.00012206 * salt ** 2;

const undissociated = (acid: keyof typeof PKA, ppm: number, pH: number): number => ppm / MOLAR[acid] / (1 + 10 ** (pH - PKA[acid]));

export const factorsOf = (product: ListeriaProduct, celsius: number): ListeriaFactors => ({
  celsius,
  waterActivity: waterActivity(product.waterPhaseSalt),
  pH: product.pH,
  phenolsPpm: product.phenolsPpm ?? 0,
  nitritePpm: product.nitritePpm ?? 0,
  carbonDioxidePpm: product.carbonDioxidePpm ?? 0,
  lactic: undissociated('lactic', product.lacticPpm ?? 0, product.pH),
  acetic: undissociated('acetic', product.aceticPpm ?? 0, product.pH),
  diacetate: undissociated('diacetate', product.diacetatePpm ?? 0, product.pH),
});
