import { describe, expect, test } from 'vitest';
import { poultryFoodCode } from '../limit-sets/food-code';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { cookedPoultry7Log } from '../limit-sets/fsis-poultry';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import type { Word } from '../thermal/instant';
import type { Piece } from '../thermal/piece';
import { addReading, beginCurve, judgeSoFar } from './judge-curve-so-far';
import type { CurveLimit } from './limit';
import { seriesOf } from './series-of';
import type { Remark } from './verdict';
import { type Point, read, judge, thin, log, ham, steps, chill } from './judge-core.test-data';

/** 100 °F and 0.35 °F more each minute to 121 °F, and from there from one minute to the next in hot air. */
const rising: Point[] = steps(61).map((minute) => [minute, 100 + 0.35 * minute]);
const outside = (word?: Word): Point[] => steps(15).map((i) => [61 + i, 168 + i / 10, word]);

describe.each<[string, CurveLimit]>([
  ['the meat table', cookedMeat65Log],
  ['the poultry table', cookedPoultry7Log],
  ['165 °F', poultryFoodCode],
])('a core at 121 °F that shows 168 °F a minute later, against %s', (_name, limit) => {
  test.each<[string, Piece | undefined]>([
    ['a sausage of 22 mm', thin],
    ['a ham of 120 mm', ham],
    ['a piece nobody has described', undefined],
  ])('%s: no core rises so fast, and nothing is met by it', (_piece, piece) => {
    expect(judge([...rising, ...outside()], limit, { piece })).toMatchObject({
      kind: 'undetermined',
      notes: expect.arrayContaining([
        { code: 'doubt-rises-faster-than-the-piece-can', figures: { count: expect.any(Number) as number } },
      ]) as Remark[],
      finding: 'faster-than-a-core',
    });
  });

  test('said not to be of the core, it is judged without them', () => {
    const without = judge(rising, limit, { piece: thin });
    const said = judge([...rising, ...outside('not of the core')], limit, { piece: thin });
    expect(said).toMatchObject({
      kind: 'missed',
      restsOn: { readings: 61, leftOut: 15 },
      finding: without?.finding,
      figures: without?.figures,
    });
    expect(said?.notes).toContainEqual({ code: 'set-aside', figures: { count: 15 } });
  });

  test('said of one reading only, a thick piece is still in doubt', () => {
    const all = [...rising, ...outside().map(([at, value], i): Point => [at, value, i === 0 ? 'not of the core' : undefined])];
    expect(judge(all, limit, { piece: ham })?.kind).toBe('undetermined');
  });

  test.each([thin, undefined])('said of one reading only, nothing is met by those that go on from it', (piece) => {
    const all = [...rising, ...outside().map(([at, value], i): Point => [at, value, i === 0 ? 'not of the core' : undefined])];
    expect(judge(all, limit, { piece })).toMatchObject({ kind: 'undetermined', finding: 'only-with-doubted' });
    // Read less often, those too near to tell by their speed alone.
    const later = all.filter(([at]) => at !== 62 && at !== 63);
    expect(judge(later, limit, { piece })).toMatchObject({
      kind: 'undetermined',
      notes: expect.arrayContaining([{ code: 'doubt-goes-on-from-what-was-not-of-the-core', figures: { count: 12 } }]) as Remark[],
      finding: 'only-with-doubted',
    });
    const [first, ...others] = later;
    expect(judge([...others, first as Point], limit, { piece })?.kind).toBe('undetermined');
    const [aside] = later.filter(([, , word]) => word !== undefined);
    const asideLast = [...later.filter(([, , word]) => word === undefined), aside as Point];
    expect(judge(asideLast, limit, { piece })?.kind).toBe('undetermined');
    const growing = beginCurve([limit], { piece });
    for (const reading of seriesOf(read(later)).temperatures) addReading(growing, reading);
    expect(judgeSoFar(growing, { ended: true })[0]?.kind).toBe('undetermined');
  });

  test('put back into the core it is judged by the core again', () => {
    const beside: Point[] = [
      [61, 168, 'not of the core'],
      [64, 168.1],
      [67, 168.2],
    ];
    const back = steps(40).map((i): Point => [70 + i, 124 + 1.2 * i]);
    expect(judge([...rising, ...beside, ...back], limit, { piece: thin })?.kind).toBe('met');
  });

  test('in as many minutes as it needs, it is met', () => {
    const slowly: Point[] = steps(120).map((minute) => [minute, 100 + 0.6 * minute]);
    expect(judge(slowly, limit, { piece: ham })?.kind).toBe('met');
  });
});

describe('141 °F for twenty minutes, then 37 °F', () => {
  test.each<[every: number, name: string, piece: Piece, kind: string]>([
    [3, '22 mm', thin, 'undetermined'],
    [5, '22 mm', thin, 'undetermined'],
    [15, '22 mm', thin, 'met'],
    [3, '60 mm', log, 'undetermined'],
    [5, '60 mm', log, 'undetermined'],
    [15, '60 mm', log, 'undetermined'],
  ])('read every %d min, a sausage of %s is %4$s', (every, _name, piece, kind) => {
    expect(judge(chill(every), coolingUncured, { piece })?.kind).toBe(kind);
  });

  test.each([3, 5, 15])('read every %d min, with those of the air set aside the chill is not shown', (every) => {
    const said = chill(every).map(([at, value]): Point => [at, value, value === 37 ? 'not of the core' : undefined]);
    expect(judge(said, coolingUncured, { piece: log })).toMatchObject({
      kind: 'missed',
      restsOn: { leftOut: chill(every).filter(([, value]) => value === 37).length },
    });
  });

  test('a fall hidden in steps of seconds is found: every reading is held against all before it', () => {
    const down: Point[] = steps(361).map((second) => [20 + second / 60, 141 - Math.min(104, second * 0.35)]);
    expect(judge([[0, 141], ...down], coolingUncured, { piece: log })?.kind).toBe('undetermined');
    const set = { setPoint: { hundredths: 3400, unit: '°F' as const }, readings: [] };
    expect(judge([[0, 141], ...down], coolingUncured, { piece: log, surroundings: set })?.kind).toBe('undetermined');
  });

  test('what lies between two readings that was set aside does not join them', () => {
    const aside: Point[] = [
      [0, 141],
      [10, 140.8],
      [11, 80, 'not of the core'],
      [12, 37],
      [60, 37],
    ];
    expect(judge(aside, coolingUncured, { piece: log })?.kind).toBe('undetermined');
  });
});
