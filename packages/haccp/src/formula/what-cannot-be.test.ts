import { expect, test } from 'vitest';
import { plainPart } from '../limits/plain-part.test-data';
import { massOf } from '../quantity/weigh';
import { isFault } from './fault';
import { ingoingPpm, substanceIn } from './ingoing';
import { nitriteByCertificate } from './natural-nitrite';
import { formulaPercentOf, percentOf } from './percent-of';
import { stabilityOf } from './shelf-stability';
import { addedWater, analysed, fatAndAddedWater } from './water-and-fat';

const kilo = massOf({ value: 1, unit: 'kg' });

test.each([
  ['a mix below nothing', substanceIn(-kilo, 6.25), 'mix-below-nothing'],
  ['a substance below nothing', ingoingPpm({ method: 'chopped', substance: -1n, greenMeat: kilo }), 'substance-below-nothing'],
  ['celery powder of no weight', nitriteByCertificate(0n, 'C-7', undefined), 'natural-source-weighs-nothing'],
  ['a weight below nothing', percentOf(-kilo, kilo), 'weight-below-nothing'],
  ['a percentage of it for the formula', formulaPercentOf(-kilo, kilo), 'weight-below-nothing'],
  ['more than all the water', stabilityOf({ pH: 5, aw: 1.001 }), 'aw-unusable 1.001 aw'],
  ['less than no water', stabilityOf({ pH: 5, aw: -0.1 }), 'aw-unusable -0.1 aw'],
  ['a fat with four decimals', analysed(30.0001), 'analysis-unusable 30.0001 %'],
  ['more moisture than there is of all', addedWater({ moisture: 101, protein: 11 }), 'analysis-unusable 101 %'],
  ['less than no protein', fatAndAddedWater({ moisture: 60, protein: -1, fat: 20 }), 'analysis-unusable -1 %'],
  ['more fat than there is of all', analysed(101), 'analysis-unusable 101 %'],
])('%s is a fault and no figure', (_case, worked, fault) => {
  expect(typeof worked === 'object' && isFault(worked) && plainPart(worked.fault)).toBe(fault);
});
