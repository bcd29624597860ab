import type { Figures } from '@larderbook/haccp';

const g = (value: string) => ({ value, unit: 'g' as const });
const kg = (value: string) => ({ value, unit: 'kg' as const });
const hours = (count: number) => ({ value: String(count * 3_600_000), unit: 'ms' as const });

/** One figure of each name that a sentence of an account takes. */
export const sampleOfAccounts: Figures = {
  ...{
    said: 'A glove tip is missing.',
    point: 'Cooking',
    points: ['Cooking', 'Chilling'],
    number: String(4),
    code: 'R-0007',
    item: 'Pork',
  },
  ...{ undecided: kg('4'), atStake: kg('10'), count: 2, left: 1, weight: kg('6'), what: 'Core temperature.', stands: 'missed' },
  ...{ reason: 'Wrong lot.', did: 'corrected', removed: { code: 'removed-sample' }, instrument: 'Probe 1', missing: 3 },
  ...{ longest: hours(2), every: hours(0.5), times: 3, probes: ['left', 'right'], who: 'Ida Marsh', by: 'Nell Varrow' },
  decided: [
    { code: 'decided-release', figures: { weight: kg('8') } },
    { code: 'decided-condemn', figures: { weight: kg('2') } },
  ],
  ...{ weighed: g('320'), target: g('160'), off: g('160'), parts: [g('160'), g('160')], allergens: [{ code: 'allergen-milk' }] },
  ...{ substance: { code: 'substance-phosphate' }, lost: kg('3'), wentIn: kg('10'), more: kg('1'), yield: { value: '90', unit: '%' } },
  ...{ least: kg('0.5'), most: kg('1.5'), beyond: kg('1.5'), customer: 'Corner Deli', thing: { code: 'removed-loss-in-cooking' } },
  entry: { code: 'entry-readings', figures: { count: 2, point: 'Cooking' } },
  ...{ flags: [{ code: 'out-of-order' }, { code: 'recorded-late' }], word: { code: 'word-not-of-the-core' } },
};
