import { expect, test } from 'vitest';
import { aLot, aReading, ms } from '../test-lots/a-lot';
import { aJudged, aPoint, cooling, dwell } from '../test-lots/a-point';
import { sheetInEnglish } from './in-english.test-data';
import { linesOfLot } from './lines-of-lot';
import { ruledLines, sheetRows, underWay, type Due } from './sheet-rows';
import { tell } from '../../../ui/tell-here.test-data';

const chill = { name: 'Chill', takenAs: 'curve' as const, limits: [cooling] };
const minutes = (count: number) => count * 60_000;
const due = (by?: number): Due => ({
  id: 'due',
  controlPointId: 'c',
  name: 'Chill',
  stage: '130 → 80 °F',
  bound: '80 °F',
  by,
  isHeld: false,
});
const watch = (now: string, ...dues: Due[]) => ({ now: ms(now), isRunning: dues.length > 0, dues });
const kinds = (rows: ReturnType<typeof sheetRows>) => rows.map(({ kind }) => kind);

test('now stands between what was recorded and the bound still to be reached', () => {
  const rows = sheetRows(linesOfLot(aLot(), sheetInEnglish), watch('08:00', due(ms('09:00'))));
  expect(kinds(rows)).toEqual(['line', 'now', 'due']);
  expect(rows[1]).toMatchObject({ from: ms('08:00'), to: ms('09:00'), ruled: 3 });
});

test('a bound whose time has passed stands above now', () => {
  expect(kinds(sheetRows(linesOfLot(aLot(), sheetInEnglish), watch('08:00', due(ms('07:30')))))).toEqual(['line', 'due', 'now']);
});

test('while a stage runs there is a line for now, even when none of its bounds can be reached any more', () => {
  expect(kinds(sheetRows(linesOfLot(aLot(), sheetInEnglish), { now: ms('08:00'), isRunning: true, dues: [] }))).toEqual(['line', 'now']);
});

test('a bound without a time stands last and stretches nothing', () => {
  const rows = sheetRows(linesOfLot(aLot(), sheetInEnglish), watch('08:00', due()));
  expect(kinds(rows)).toEqual(['line', 'now', 'due']);
  expect(rows[2]).toMatchObject({ from: ms('08:00'), to: ms('08:00') });
});

test('when nothing runs there is no line for now', () => {
  expect(kinds(sheetRows(linesOfLot(aLot(), sheetInEnglish), watch('08:00')))).toEqual(['line']);
});

test.each([
  [0, 2],
  [minutes(59), 3],
  [minutes(61), 4],
  [minutes(60 * 14), 6],
])('%d ms take %d ruled lines', (gap, ruled) => {
  expect(ruledLines(gap)).toBe(ruled);
});

test('the dues are those of the stages that run, with the bound the verdict names', () => {
  const running = { code: 'cooling', figures: { stage: '130 → 80 °F', to: '80 °F' }, deadline: ms('13:30') };
  const lot = aLot({
    controlPoints: [
      aPoint(chill, {
        stands: 'running',
        readings: [aReading('12:00', 128)],
        judged: [aJudged(cooling, { kind: 'undetermined', running })],
      }),
    ],
  });
  expect(underWay(lot, ms('12:10'), tell).dues).toMatchObject([{ name: 'Chill', bound: '80 °F', by: ms('13:30') }]);
  expect(underWay(aLot({ controlPoints: [aPoint(chill)] }), ms('12:10'), tell)).toMatchObject({ isRunning: false, dues: [] });
});

test('a hold is due when it has been held long enough', () => {
  const running = { code: 'dwell-hold', figures: { at: '145 °F', needed: '4 min' }, until: ms('10:04') };
  const cook = aPoint(
    { name: 'Cook', takenAs: 'curve', limits: [dwell] },
    {
      stands: 'running',
      readings: [aReading('10:00', 146)],
      judged: [aJudged(dwell, { kind: 'undetermined', running })],
    },
  );
  expect(underWay(aLot({ controlPoints: [cook] }), ms('10:01'), tell).dues).toMatchObject([{ by: ms('10:04'), isHeld: true }]);
});

test('two probes read one after the other are one round; the next round begins anew', () => {
  const readings = [aReading('12:00', 128, { probe: '1' }), aReading('12:01', 126, { probe: '2' }), aReading('12:04', 120, { probe: '1' })];
  const rows = sheetRows(linesOfLot(aLot({ controlPoints: [aPoint(chill, { readings })] }), sheetInEnglish), watch('13:00'));
  expect(rows.map((row) => row.kind === 'line' && Boolean(row.continues))).toEqual([false, false, true, false]);
});

test('what differs in a round is said again', () => {
  const readings = [aReading('12:00', 128, { probe: '1' }), aReading('12:01', 126, { probe: '2', flags: ['recorded-late'] })];
  const rows = sheetRows(linesOfLot(aLot({ controlPoints: [aPoint(chill, { readings })] }), sheetInEnglish), watch('13:00'));
  expect(rows.some((row) => row.kind === 'line' && row.continues)).toBe(false);
});

test('a long run of plain readings is folded, unless somebody unfolds it', () => {
  const readings = Array.from({ length: 20 }, (_none, i) => aReading(`12:${String(i + 10)}`, 130 - i));
  const lines = linesOfLot(aLot({ controlPoints: [aPoint(chill, { readings })] }), sheetInEnglish);
  const rows = sheetRows(lines, watch('13:00'));
  const folded = rows.find((row) => row.kind === 'folded');
  expect(rows).toHaveLength(8);
  expect(folded?.lines).toHaveLength(14);
  expect(sheetRows(lines, watch('13:00'), new Set([folded?.id ?? '']))).toHaveLength(21);
});

test('a missed or flagged reading is never folded away', () => {
  const readings = Array.from({ length: 20 }, (_none, i) =>
    aReading(`12:${String(i + 10)}`, 130 - i, i === 10 ? { flags: ['recorded-late'] } : {}),
  );
  const rows = sheetRows(linesOfLot(aLot({ controlPoints: [aPoint(chill, { readings })] }), sheetInEnglish), watch('13:00'));
  expect(kinds(rows)).not.toContain('folded');
});
