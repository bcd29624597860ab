import { describe, expect, test } from 'vitest';
import { nitriteComminuted } from '../limit-sets/curing';
import { judgeConcentration, type Portion } from '../kinds/concentration/judge-concentration';
import { judgeRange } from '../kinds/range/judge-range';
import type { AttestationLimit } from '../kinds/attestation/attestation-limit';
import type { ConcentrationLimit } from '../kinds/concentration/concentration-limit';
import type { RangeLimit } from '../kinds/range/range-limit';
import { plain, type Measurement } from '../limits/measurement';
import { degrees } from '../quantity/degrees';
import { massOf } from '../quantity/weigh';
import { explainAttestation } from '../kinds/attestation/explain-attestation';
import { explainConcentration, type Brought } from '../kinds/concentration/explain-concentration';
import { explainRange } from '../kinds/range/explain-range';
import { explainLimit } from './explain-limit';
import type { FigureLimit } from '../kinds/figure/figure-limit';
import type { Recorded } from '../kinds/explainer';
import type { WorkedOut } from './explanation';
import { plainPart } from '../limits/plain-part.test-data';

const source = { citation: 'Arithmetic', edition: '', confirmed: true };

const worked = ({ steps }: WorkedOut) =>
  steps.map(({ what, putIn, gives }) => `${plainPart(what)}: ${plainPart(putIn)} → ${plainPart(gives)}`);

const ruleOf = ({ steps }: WorkedOut) => plainPart(steps.at(-1)?.rule ?? '');

describe('a value', () => {
  const cold: RangeLimit = { kind: 'range', measured: 'temperature', max: { '°F': 4100, '°C': 500 }, source };
  const read = (limit: RangeLimit, ...all: (Measurement | undefined)[]) =>
    explainRange(
      limit,
      all.map((measurement, index) => ({ id: `v${index}`, at: index, measurement })),
    );

  test('against a most: the distance in the unit read', () => {
    expect(worked(read(cold, degrees(38.5, '°F')))).toEqual(['below-the-most ≤ 41 °F: 41 °F − 38.5 °F → 2.5 °F. (because)']);
  });

  test('against a figure that its source prints in the other unit only: converted', () => {
    const [step] = worked(read({ ...cold, max: { '°C': 500 } }, degrees(38.5, '°F')));
    expect(step).toContain('below-the-most ≤ 41 °F: 41 °F − 38.5 °F → 2.5 °F.');
  });

  test('against a least, in °C', () => {
    const hot: RangeLimit = { ...cold, min: { '°C': 6300 }, max: undefined };
    expect(worked(read(hot, degrees(64.5, '°C')))).toEqual([expect.stringContaining('64.5 °C − 63 °C → 1.5 °C')]);
  });

  test('against both bounds, the strict sign as printed', () => {
    const limit: RangeLimit = { kind: 'range', measured: 'pH', min: 4600, max: 5300, signs: { min: '>' }, source };
    expect(worked(read(limit, plain(5.1)))).toEqual([
      expect.stringContaining('above-the-least > 4.6: 5.1 − 4.6 → 0.5'),
      expect.stringContaining('below-the-most ≤ 5.3: 5.3 − 5.1 → 0.2'),
    ]);
    const strict: RangeLimit = { kind: 'range', measured: 'aw', min: 100, max: 850, signs: { max: '<' }, source };
    expect(worked(read(strict, plain(0.8)))).toEqual([expect.stringContaining('≥ 0.1'), expect.stringContaining('< 0.85')]);
  });

  test('the worst of several governs, and each of the others says how it was judged', () => {
    const { steps, restsOn, assumptions } = read(cold, degrees(38, '°F'), degrees(44, '°F'), degrees(40, '°F'));
    expect(plainPart(steps[0]?.gives ?? '')).toBe('-3 °F. (because)');
    expect(steps[0]?.of).toMatchObject({ kind: 'missed' });
    expect(restsOn.map(({ id, role }) => `${id} ${plainPart(role)}`)).toEqual([
      'v0 (kind and margin)',
      'v1 governs',
      'v2 (kind and margin)',
    ]);
    expect(assumptions).toEqual([{ code: 'each-value-by-itself' }]);
  });

  test('with an error of the thermometer is compared with the figure made stricter by it', () => {
    const explained = explainRange(cold, [{ measurement: degrees(40.5, '°F') }], { temperature: degrees(1, '°F') });
    expect(worked(explained)).toEqual([expect.stringContaining('40 °F − 40.5 °F → -0.5 °F')]);
  });

  test('of another kind than the limit, and none at all, have nothing to put in', () => {
    expect(worked(read(cold, plain(5)))).toEqual([]);
    expect(worked(read({ ...cold, measured: 'pH', max: 5000 }, degrees(40, '°F')))).toEqual([]);
    expect(worked(read(cold, undefined))).toEqual([]);
    expect(read(cold)).toEqual({ steps: [], restsOn: [], assumptions: [] });
  });
});

describe('a cure', () => {
  const meatBlock = massOf({ value: 10, unit: 'kg' });
  const meat = [{ id: 'm', name: 'Meat 1', mass: meatBlock }];
  const cure = { id: 'w', name: 'Curing salt 6.25 %', mass: massOf({ value: 25, unit: 'g' }), percent: 6.25 };
  const explain = (limit: ConcentrationLimit, brought: (Brought & Portion)[] = [cure]) =>
    explainConcentration(limit, judgeConcentration(brought, meatBlock, limit), brought, meat, meatBlock);

  test('by a limit that asks for a least alone shows that one', () => {
    const least = { min: 12_000, max: undefined, maxThousandths: undefined };
    expect(ruleOf(explain({ ...nitriteComminuted, ...least }))).toBe('bounds-least 120 ppm');
  });

  test('is worked out weighing by weighing, by their names', () => {
    const explained = explain(nitriteComminuted);
    expect(worked(explained)).toEqual([
      'meat-block: 10000 g → 10000 g',
      `substance-in substance-sodium-nitrite ${cure.name}: 25 g × 6.25 % → 1.5625 g`,
      'ingoing: 1.5625 g ÷ 10000 g × 1000000 → (measured)',
      'against-limit: (measured) → (margin and because)',
    ]);
    expect(ruleOf(explained)).toBe('bounds-most 156.25 ppm ¼ oz per 100 lb (156 ppm)');
    expect(explained.restsOn.map(({ id, is }) => [id, plainPart(is)])).toEqual([
      ['m', 'named-weight Meat 1 10000 g'],
      ['w', 'named-weight Curing salt 6.25 % 25 g'],
    ]);
  });

  test('weighed on a scale that may be wrong says by how much, of what has no name too', () => {
    const { name, ...nameless } = { ...cure, error: massOf({ value: 1, unit: 'g' }) };
    const { assumptions } = explain(nitriteComminuted, [nameless, { ...nameless, name }]);
    expect(assumptions.map((one) => plainPart(one)).filter((one) => one.startsWith('weight-may'))).toEqual([
      'weight-may-be-wrong the-ingredient 1 g',
      'weight-may-be-wrong Curing salt 6.25 % 1 g',
    ]);
  });

  test('counted as the ion shows the ratio of the molar masses', () => {
    const counted = { min: 5000, max: 8000, maxThousandths: undefined, countedAs: 'NO₂' as const };
    const explained = explain({ ...nitriteComminuted, ...counted, printed: '80 mg/kg' });
    expect(worked(explained)).toContainEqual(expect.stringMatching(/^counted-as NO₂: 1\.5625 g × \d+ ÷ \d+ →/));
    expect(ruleOf(explained)).toBe('bounds-both 50 ppm 80 ppm 80 mg/kg');
  });

  test('with nothing weighed, no meat and no bound says so', () => {
    const { max, maxThousandths, ...open } = nitriteComminuted;
    expect([max, maxThousandths].some((figure) => figure !== undefined)).toBe(true);
    const nothing = explainConcentration(open, judgeConcentration([], 0n, open), [], [], 0n);
    expect(worked(nothing)[0]).toBe('meat-block: nothing-yet → 0 g');
    expect(ruleOf(nothing)).toBe('no-bound');
  });

  test('of an ingredient without a name or a usable content is undetermined and still shown', () => {
    const nameless = { mass: cure.mass, percent: NaN };
    const explained = explain(nitriteComminuted, [nameless as typeof cure]);
    expect(worked(explained)[1]).toBe('substance-in substance-sodium-nitrite the-ingredient: 25 g × content-not-known → 0 g');
    expect(plainPart(explained.restsOn[1]?.is ?? '')).toBe('named-weight the-ingredient 25 g');
  });

  test('says the caution about curing salts, and its working once something is weighed', () => {
    const verdict = judgeConcentration([cure], meatBlock, nitriteComminuted);
    const weighed = () => ({ brought: [cure], meat, meatBlock });
    const explained = explainLimit(nitriteComminuted, verdict, { ...nothingRecorded, weighed });
    expect(explained.cautions[0]).toEqual({ code: 'caution-curing' });
    expect(explained.steps).toEqual(explain(nitriteComminuted).steps);
    expect(explainLimit(nitriteComminuted, verdict, nothingRecorded).steps).toHaveLength(1);
  });
});

test('an answer is shown with what was seen, and a bare yes as doubt', () => {
  const limit: AttestationLimit = { kind: 'attestation', statement: 'The label is right.', source };
  const { steps, restsOn } = explainAttestation(limit, [
    { id: 'a', at: 1, answer: { holds: true, seen: 'Label 12.' } },
    { id: 'b', at: 2, answer: { holds: true, seen: '' } },
  ]);
  expect(steps.map(({ of }) => of?.kind)).toEqual(['met', 'undetermined']);
  expect(restsOn.map(({ role }) => plainPart(role))).toEqual(['judged-met', 'judged-undetermined']);
});

const nothingRecorded: Recorded = {
  alone: [],
  series: { temperatures: [], acid: [], weights: [] },
  context: { ended: false },
};

test('single values, figures and answers are explained by their records', () => {
  const acid: RangeLimit = { kind: 'range', measured: 'pH', max: 5300, source };
  const verdict = { ...judgeRange(plain(5), acid), notes: [{ code: 'a-note' }] };
  const alone = [{ id: 'r', at: 1, probe: 'A', read: { value: 5, unit: 'pH' } }];
  const explained = explainLimit(acid, verdict, { ...nothingRecorded, alone });
  expect(explained).toMatchObject({ verdict, rescue: [], assumptions: [{ code: 'a-note' }], sources: [source] });
  expect(explained.restsOn).toEqual([
    { id: 'r', at: 1, probe: 'A', is: { verdict: 'measured' }, role: { code: 'governs' }, of: judgeRange(plain(5), acid) },
  ]);
  expect(explainLimit(acid, verdict, { ...nothingRecorded, alone: [{ id: 'none' }] }).restsOn).toMatchObject([
    { of: { kind: 'undetermined' } },
  ]);

  const dry: FigureLimit = { kind: 'figure', of: 'water activity', unit: 'aw', max: 910, source };
  const read = [{ id: 'f', at: 2, read: { value: 0.9, unit: 'aw' } }];
  expect(explainLimit(dry, verdict, { ...nothingRecorded, alone: read }).restsOn).toMatchObject([{ id: 'f', of: { kind: 'met' } }]);

  const seen: AttestationLimit = { kind: 'attestation', statement: 'The label is right.', source };
  const answers = [{ id: 'a', at: 3, answer: { holds: true, seen: 'Label 12.' } }];
  expect(explainLimit(seen, verdict, { ...nothingRecorded, alone: answers }).restsOn).toMatchObject([
    { id: 'a', role: { code: 'judged-met' } },
  ]);
});
