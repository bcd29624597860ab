import { z } from 'zod';
import { boundProducts, wateredFormulas, wateredProducts } from '@larderbook/haccp';
import { calculator, publishedKey, typedNumber } from './calculator';
import { count, mass, name, percent } from './fields';
import { fault } from './fault';

export const pickledSubstances = ['sodium nitrite', 'sodium nitrate', 'sodium erythorbate'] as const;
export const calculatePickle = calculator(
  'cure-for-pickle',
  'How much curing salt or accelerator goes into a pickle for pumping or immersion',
  z.object({
    substance: z.enum(pickledSubstances),
    pickle: mass,
    pump: percent(100),
    ppm: typedNumber(1, 100_000, 0),
    strength: percent(100),
  }),
);
export const calculateBrine = calculator('strength-of-brine', 'Strength of a brine by weight', z.object({ salt: mass, water: mass }));
export const calculatePump = calculator(
  'pump-by-weight',
  'How much was pumped in, by the weights before and after',
  z.object({ green: mass, pumped: mass }),
);
export const calculatePhosphate = calculator(
  'phosphate-in-pumped-meat',
  'Phosphate that a pickle brings into pumped meat, against its limit',
  z.object({ pickle: percent(100), pump: percent(100) }),
);
export const calculateBinders = calculator(
  'binders-in-product',
  'Binders together, the strong ones with their factor, against the limit of the product',
  z.object({
    product: z.enum(boundProducts),
    finished: mass,
    usual: mass.optional(),
    isolatedSoy: mass.optional(),
    caseinate: mass.optional(),
  }),
);
export const calculateCitric = calculator(
  'citric-for-accelerator',
  'The share of a cure accelerator that citric acid stands in for',
  z.object({ accelerator: mass, citric: mass }),
);
const ofALot = name.max(60, fault('at-most-characters', { most: 60 }));
export const calculateNaturalNitrite = calculator(
  'nitrite-from-natural-source',
  'Nitrite from a natural source by the certificate of its lot, at least and at most',
  z.object({
    natural: mass,
    ingredientLot: ofALot,
    certificateLot: ofALot,
    percent: percent(100),
    plusMinus: typedNumber(0, 100, 4).optional(),
    as: z.enum(['NaNO₂', 'NO₂']),
    meat: mass,
    limit: publishedKey,
  }),
);
export const calculateWaterInFormula = calculator(
  'water-in-formula',
  'The most water or ice that a formula takes',
  z.object({ product: z.enum(wateredFormulas), others: mass }),
);
const analysed = typedNumber(0, 100);
export const calculateWaterInProduct = calculator(
  'water-in-finished-product',
  'Moisture that a finished product may hold by its protein, and how its analysis stands to it',
  z.object({ product: z.enum(wateredProducts), moisture: analysed, protein: analysed, fat: analysed.optional() }),
);
export const calculatePercent = calculator(
  'percent-and-weight',
  'From percent to weight, or from weight to percent',
  z.object({ base: mass, percent: percent(1000).optional(), weight: mass.optional() }),
);
export const calculateBatch = calculator(
  'batch-by-percent',
  'What to weigh for trimmed meat, or back from packages wanted through the yield',
  z
    .object({
      from: z.enum(['trimmed meat', 'packages']),
      lines: z.array(z.object({ name, percent: percent(1000) })).max(60, fault('at-most-lines', { most: 60 })),
      trimmedMeat: mass.optional(),
      packages: count.optional(),
      net: mass.optional(),
      yieldPercent: percent(1000).optional(),
      yieldOn: z.enum(['meat block', 'everything']),
    })
    .superRefine((asked, { addIssue }) => {
      const missing = asked.from === 'packages' ? (['packages', 'net', 'yieldPercent'] as const) : (['trimmedMeat'] as const);
      for (const key of missing) {
        if (asked[key] === undefined) addIssue({ code: 'custom', path: [key], message: NEEDED[key] });
      }
    }),
);
const NEEDED = {
  trimmedMeat: fault('give-trimmed-meat'),
  packages: fault('give-how-many-packages'),
  net: fault('give-net-weight'),
  yieldPercent: fault('give-the-yield'),
} as const;
