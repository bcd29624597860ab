import { describe, expect, test } from 'vitest';
import {
  doseFor,
  erythorbateComminuted,
  ingoingPpm,
  judgeConcentration,
  massOf,
  nitrateComminuted,
  nitriteComminuted,
  nitriteDryCured,
  nitritePumped,
  formatMass,
  substanceForPickle,
  substanceIn,
  sumMeatBlock,
  type ConcentrationLimit,
  type Cure,
  type EnteredMass,
  type Fault,
} from '@larderbook/haccp';
import { formatIngoing, formatPpmAs } from '../support/format-ppm';
import { told } from '../support/told';

const mass = (value: number, unit: EnteredMass['unit']) => massOf({ value, unit });
const ingoing = (substance: bigint, percent: number, meat: bigint, limit: ConcentrationLimit) => {
  const { kind, measured } = told(judgeConcentration([{ mass: substance, percent }], meat, limit));
  return `${kind} ${measured}`;
};
const hundredPounds = mass(100, 'lb');
const worked = <Result>(result: Result | Fault): Result => {
  if (typeof result === 'object' && result !== null && 'fault' in result) throw new Error(result.fault.code);
  return result as Result;
};
const sayCure = (cure: Cure, decimals = 2) => formatIngoing(worked(ingoingPpm(cure)), decimals);

describe('9 CFR 424.21(c), amounts as printed, 1-1-24 edition, pp. 569-571', () => {
  test.each([
    ['¼ oz nitrite on 100 lb chopped', ingoing(mass(0.25, 'oz'), 100, hundredPounds, nitriteComminuted), 'met 156.25 ppm'],
    ['1 oz nitrite on 100 lb dry cured', ingoing(mass(1, 'oz'), 100, hundredPounds, nitriteDryCured), 'met 625 ppm'],
    ['2¾ oz nitrate on 100 lb chopped', ingoing(mass(2.75, 'oz'), 100, hundredPounds, nitrateComminuted), 'met 1,718.75 ppm'],
    ['⅞ oz erythorbate on 100 lb chopped', ingoing(mass(0.875, 'oz'), 100, hundredPounds, erythorbateComminuted), 'met 546.88 ppm'],
    ['¾ oz ascorbic acid on 100 lb', sayCure({ method: 'chopped', substance: mass(0.75, 'oz'), greenMeat: hundredPounds }), '468.75 ppm'],
    [
      '2 lb nitrite in 1000 lb of pickle, 10 % pump',
      sayCure({ method: 'pumped', substance: mass(2, 'lb'), pickle: mass(1000, 'lb'), pumpPercent: 10 }),
      '200 ppm',
    ],
    [
      '87.5 oz erythorbate in 1000 lb of pickle, 10 % pump',
      sayCure({ method: 'pumped', substance: mass(87.5, 'oz'), pickle: mass(1000, 'lb'), pumpPercent: 10 }, 3),
      '546.875 ppm',
    ],
  ])('%s', (_case, found, expected) => {
    expect(found).toBe(expected);
  });

  test('a little more than printed is missed', () => {
    expect(ingoing(mass(0.251, 'oz'), 100, hundredPounds, nitriteComminuted)).toMatch(/^missed/);
    expect(ingoing(mass(1.001, 'oz'), 100, hundredPounds, nitriteDryCured)).toMatch(/^missed/);
    expect(ingoing(mass(0.876, 'oz'), 100, hundredPounds, erythorbateComminuted)).toMatch(/^missed/);
  });
});

/** Arithmetic on the same amounts; the strength of curing salts is a trade figure (6.25 %, others sell 5.88 %). */
describe('curing salt of 6.25 % sodium nitrite', () => {
  test('4 oz on 100 lb are the ¼ oz of the rule', () => {
    expect(ingoing(mass(4, 'oz'), 6.25, hundredPounds, nitriteComminuted)).toBe('met 156.25 ppm');
  });

  test('25 g on 10 kg; at a limit of 156 ppm flat it would be 24.96 g', () => {
    expect(ingoing(mass(25, 'g'), 6.25, mass(10, 'kg'), nitriteComminuted)).toBe('met 156.25 ppm');
    const flat = doseFor({ ...nitriteComminuted, max: 15_600 }, mass(10, 'kg'), 6.25);
    expect(formatMass(flat?.most ?? 0n, 'g', 2, 'down')).toBe('24.96 g');
  });

  // FSIS Directive 7620.3, p. 11: the green weight of the meat block only.
  test('ice and spice do not thin it: 100 lb of meat with 5 lb of them is still 100 lb', () => {
    const block = sumMeatBlock([
      { mass: hundredPounds, isMeat: true },
      { mass: mass(3, 'lb'), isMeat: false },
      { mass: mass(2, 'lb'), isMeat: false },
    ]);
    expect(ingoing(mass(4, 'oz'), 6.25, block, nitriteComminuted)).toBe('met 156.25 ppm');
  });
});

describe('published worked examples', () => {
  // network-technologies.org, Virtual Brain Online, article 95 (formula of FSIS Directive 7620.3, p. 19).
  test('462.1875 lb of pickle with 50 lb of cure at 0.75 %, 20 % pump: 162 ppm', () => {
    const nitrite = worked(substanceIn(mass(50, 'lb'), 0.75));
    const pickle = mass(462.187, 'lb') + mass(1, 'lb') / 2000n;
    expect(sayCure({ method: 'pumped', substance: nitrite, pickle, pumpPercent: 20 })).toBe('162.27 ppm');
  });

  // Same page.
  test('5 lb of cure at 0.40 % rubbed on 100 lb of bellies: 200 ppm', () => {
    const substance = worked(substanceIn(mass(5, 'lb'), 0.4));
    expect(sayCure({ method: 'dry-cured', substance, greenMeat: hundredPounds })).toBe('200 ppm');
  });

  // forum.sausagemaking.org, quoting FSIS Directive 7620.3, p. 19.
  test('1266 g of brine with 32 g of cure at 5.88 %, 10 % pump: 148.6 ppm', () => {
    const nitrite = worked(substanceIn(mass(32, 'g'), 5.88));
    const pumped = { substance: nitrite, pickle: mass(1266, 'g'), pumpPercent: 10 };
    expect(sayCure({ method: 'pumped', ...pumped }, 1)).toBe('148.6 ppm');
  });

  // Same forum, immersion by method 2: above the 200 ppm for immersed meat.
  test('3 g of nitrite, 5670 g of meat and 2066 g of brine: 387.8 ppm, too much', () => {
    const together = { substance: mass(3, 'g'), greenMeat: mass(5670, 'g'), pickle: mass(2066, 'g') };
    expect(sayCure({ method: 'immersed until even', ...together }, 1)).toBe('387.8 ppm');
    expect(ingoing(mass(3, 'g'), 100, mass(7736, 'g'), nitritePumped)).toMatch(/^missed/);
  });
});

/** 9 CFR 424.22(b) for pumped bacon, formula of FSIS Directive 7620.3, p. 19. */
describe('pumped bacon', () => {
  test.each([
    [10, '1.2 lb'],
    [12, '1 lb'],
  ])('120 ppm in 1000 lb of pickle at %s %% pump take', (pump, nitrite) => {
    expect(formatMass(worked(substanceForPickle(120, mass(1000, 'lb'), pump)), 'lb')).toBe(nitrite);
  });

  test('120 ppm of sodium nitrite are 148 ppm of potassium nitrite', () => {
    expect(formatPpmAs(120, 'NaNO₂', 'KNO₂', 0)).toBe('148 ppm as KNO₂');
  });
});
