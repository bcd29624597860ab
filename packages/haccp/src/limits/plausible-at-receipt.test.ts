import { describe, expect, test } from 'vitest';
import { receivedChilled } from '../limit-sets/receiving';
import { degrees } from '../quantity/degrees';
import type { RangeLimit } from '../kinds/range/range-limit';
import { askAboutReceipt } from './plausible-at-receipt';

const frozenGoods: RangeLimit = { ...receivedChilled, max: { '°F': 0, '°C': -1800 } };

describe('a temperature at receipt', () => {
  test.each([
    ['a usual reading in °F', degrees(38, '°F'), receivedChilled],
    ['a usual reading in °C', degrees(3.5, '°C'), receivedChilled],
    ['warm, but a delivery can be that warm', degrees(15, '°C'), receivedChilled],
    ['on the edge of what is plausible', degrees(77, '°F'), receivedChilled],
    ['frozen goods', degrees(-18, '°C'), frozenGoods],
    ['flour on a summer day, received without a limit', degrees(38, '°C'), undefined],
  ])('%s is not asked about', (_case, entered, limit) => {
    expect(askAboutReceipt(entered, limit)).toBeUndefined();
  });

  test.each([
    ['°F typed as °C', degrees(38, '°C'), receivedChilled, { meant: degrees(38, '°F') }],
    ['°C typed as °F', degrees(4, '°F'), receivedChilled, { meant: degrees(4, '°C') }],
    ['a slipped decimal point', degrees(382, '°F'), receivedChilled, {}],
    ['an oven, not a delivery', degrees(180, '°C'), undefined, {}],
  ])('%s is asked about', (_case, entered, limit, question) => {
    expect(askAboutReceipt(entered, limit)).toEqual(question);
  });
});
