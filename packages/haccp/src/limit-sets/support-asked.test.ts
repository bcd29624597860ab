import { expect, test } from 'vitest';
import type { CriticalLimit } from '../limits/limit';
import type { Support } from '../limits/support';
import { coolingCured, coolingFromCooking, coolingUncured, coolingUncured2021 } from './fsis-stabilization';
import { cookedMeat65Log } from './fsis-meat';
import { receivedChilled } from './receiving';
import { supportAsked, supportLacking } from './support-asked';

const says = (limit: CriticalLimit, support?: Support): CriticalLimit => ({ ...limit, source: { ...limit.source, support } });
const lacks = (limit: CriticalLimit, support?: Support) => supportLacking(says(limit, support)).length;
const [read, gap, own] = ['December 2021, p. 20', 'large mass, non-intact, p. 31', 'letter in folder 3'];

test('a figure that was read and is not left behind asks for nothing', () => {
  expect(supportAsked(cookedMeat65Log)).toEqual({ figure: false, option: [] });
  expect(lacks(cookedMeat65Log)).toBe(0);
});

test.each([coolingUncured, coolingFromCooking])('an option of 1999 that was read asks for its gap or for support', (limit) => {
  expect(supportAsked(limit)).toMatchObject({ figure: false, option: [expect.stringContaining('14 December 2022')] });
  expect([lacks(limit), lacks(limit, { read }), lacks(limit, { gap: 'yes' })]).toEqual([1, 1, 1]);
  expect([lacks(limit, { gap }), lacks(limit, { own })]).toEqual([0, 0]);
  expect(supportLacking(limit)).toMatchObject([{ code: 'option-not-supported' }]);
});

test.each([coolingUncured2021, receivedChilled])('a figure that nobody has read asks where the shop has, or for support', (limit) => {
  expect([lacks(limit), lacks(limit, { gap })]).toEqual([1, 1]);
  expect([lacks(limit, { read }), lacks(limit, { own })]).toEqual([0, 0]);
  expect(supportLacking(limit)).toEqual([{ code: 'figure-not-read', figures: { citation: limit.source.citation } }]);
});

test('an option of 1999 known second hand asks for both, and support of one’s own answers both', () => {
  expect(lacks(coolingCured)).toBe(2);
  expect([lacks(coolingCured, { read }), lacks(coolingCured, { gap }), lacks(coolingCured, { read, gap })]).toEqual([1, 1, 0]);
  expect(lacks(coolingCured, { own })).toBe(0);
});

test('a tick does not make a published figure read, and another longest gap not another figure', () => {
  const ticked = { ...coolingUncured2021, longestGapSeconds: 60, source: { ...coolingUncured2021.source, confirmed: true } };
  expect(supportAsked(ticked).figure).toBe(true);
  expect(supportAsked({ ...ticked, source: { citation: 'Own study 7', edition: '2026', confirmed: true } }).figure).toBe(false);
});

test('what a limit of one’s own asks to be supported is asked for too', () => {
  const limit: CriticalLimit = {
    kind: 'figure',
    of: 'fat',
    unit: '%',
    max: 30_000,
    source: { citation: 'Own study 7', edition: '2026', confirmed: true },
    conditions: [{ kind: 'support', says: 'Only with the study on file.' }],
  };
  expect(supportLacking(limit)).toEqual([{ code: 'option-not-supported', figures: { asked: 'Only with the study on file.' } }]);
});
