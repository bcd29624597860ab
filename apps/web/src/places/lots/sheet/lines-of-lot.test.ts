import { expect, test } from 'vitest';
import { aLot, anInput, aReading, at, aWeighing, weight } from '../test-lots/a-lot';
import { aJudged, aPoint, cooling, dwell, nitrite } from '../test-lots/a-point';
import { sheetInEnglish } from './in-english.test-data';
import { linesOfLot } from './lines-of-lot';

const cook = { name: 'Cook', takenAs: 'curve' as const, limits: [dwell] };
const said = (lot: Parameters<typeof linesOfLot>[0]) =>
  linesOfLot(lot, sheetInEnglish).map(({ what, value }) => (value ? `${what} ${value}` : what));

test('everything stands in the order it happened, whichever list of the reply it came in', () => {
  const lot = aLot({
    inputs: [anInput('07:42')],
    weighings: [aWeighing('08:10')],
    controlPoints: [aPoint(cook, { readings: [aReading('10:00', 120), aReading('09:00', 60)], endedAt: at('11:00') })],
    packings: [
      {
        packingId: 'p',
        rowId: 'p',
        code: '26064-1-A',
        lotId: 'lot',
        lotCode: '26064-1',
        productName: 'Sausage',
        count: 40,
        left: 40,
        net: weight(1, 'lb'),
        useBy: '2026-04-02',
        flags: [],
        made: { personId: 'x', name: 'Ada Brook', at: at('16:00'), recordedAt: at('16:00'), station: '' },
      },
    ],
  });
  expect(said(lot)).toEqual([
    'Lot started',
    'Pork shoulder 50 lb',
    'Salt 400 g',
    'Cook 60 °F',
    'Cook 120 °F',
    'Cook finished',
    'Packed 26064-1-A 40 × 1 lb',
  ]);
});

test('meat says what was taken, what was trimmed, and from whom it came', () => {
  const [, meat] = linesOfLot(aLot({ inputs: [anInput('07:42')] }), sheetInEnglish);
  expect(meat?.notes).toEqual(['52 lb taken, trimmed to 50 lb', 'Delivery R-0007', 'Fernhill Farm, lot FH-2211']);
});

test('a deviation hangs under the reading that opened it, with the corrective action of the plan', () => {
  const deviation = { deviationId: 'd', number: 7, description: [], open: true, openedAt: at('11:00') };
  const missed = aReading('11:00', 140, { deviationId: 'd', judged: [aJudged(dwell, { kind: 'missed' })] });
  const lines = linesOfLot(aLot({ deviations: [deviation], controlPoints: [aPoint(cook, { readings: [missed] })] }), sheetInEnglish);
  expect(lines).toHaveLength(2);
  expect(lines[1]).toMatchObject({
    deviation: { number: 7, correctiveAction: expect.stringContaining('Hold the lot') },
  });
});

test('a curve missed while it ran says so at the reading that showed it, also once it is finished', () => {
  const deviation = { deviationId: 'd', number: 7, description: [], open: true, openedAt: at('13:40') };
  const readings = [aReading('12:00', 128), aReading('13:40', 85, { deviationId: 'd' }), aReading('14:40', 60)];
  const judged = [aJudged(cooling, { kind: 'missed', finding: 'cooling-too-late' })];
  const lines = linesOfLot(
    aLot({
      deviations: [deviation],
      controlPoints: [aPoint({ ...cook, limits: [cooling] }, { readings, judged, endedAt: at('15:00') })],
    }),
    sheetInEnglish,
  );
  expect(lines.filter((line) => line.deviation)).toMatchObject([
    { value: '85 °F', deviation: { missed: [{ verdict: { finding: 'cooling-too-late' } }] } },
  ]);
});

test('what a running curve has met already stands under its last reading, and beside none', () => {
  const judged = [aJudged(dwell), aJudged(cooling, { kind: 'undetermined' })];
  const lines = linesOfLot(
    aLot({ controlPoints: [aPoint(cook, { readings: [aReading('10:00', 160), aReading('10:05', 41)], judged })] }),
    sheetInEnglish,
  );
  expect(lines.map(({ what, value, judged: said }) => [what, value, said.length])).toEqual([
    ['Lot started', undefined, 0],
    ['Cook', '160 °F', 0],
    ['Cook', '41 °F', 0],
    ['Cook so far', undefined, 1],
  ]);
});

test('of a running curve that has decided nothing, or was finished, nothing is said so far', () => {
  const judged = [aJudged(cooling, { kind: 'undetermined' })];
  const readings = [aReading('10:00', 140)];
  expect(said(aLot({ controlPoints: [aPoint(cook, { readings, judged })] }))).toEqual(['Lot started', 'Cook 140 °F']);
  const ended = aPoint(cook, { readings, judged: [aJudged(dwell)], endedAt: at('10:10') });
  expect(said(aLot({ controlPoints: [ended] }))).toEqual(['Lot started', 'Cook 140 °F', 'Cook finished']);
});

test('too much cure hangs its open deviation under the weighing, though the weighing does not name it', () => {
  const deviation = { deviationId: 'd', number: 8, description: [], open: true, openedAt: at('08:10') };
  const cure = aPoint({ name: 'Cure', takenAs: 'weighings', limits: [nitrite] }, { openDeviationId: 'd' });
  const weighing = aWeighing('08:10', {
    controlPointId: cure.controlPoint.controlPointId,
    judged: [aJudged(nitrite, { kind: 'missed' })],
  });
  const lines = linesOfLot(aLot({ deviations: [deviation], weighings: [weighing], controlPoints: [cure] }), sheetInEnglish);
  expect(lines).toHaveLength(2);
  expect(lines[1]?.deviation?.number).toBe(8);
});

test('a deviation opened by hand has a line of its own', () => {
  const deviation = {
    deviationId: 'd',
    number: 7,
    description: [{ code: 'as-worded', figures: { said: 'A casing burst' } }],
    open: true,
    openedAt: at('11:00'),
  };
  expect(said(aLot({ deviations: [deviation] }))).toEqual(['Lot started', 'Deviation 7 opened']);
});

test('of two things of the same minute the one that comes first in the work comes first', () => {
  const readings = [aReading('07:05', 60)];
  expect(said(aLot({ inputs: [anInput('07:05')], controlPoints: [aPoint(cook, { readings })] }))[0]).toBe('Lot started');
});

test('a reading that was not of the core stays on its line, left out, with who said so and why', () => {
  const made = { personId: 'x', name: 'Ida Marsh', at: at('11:10'), recordedAt: at('11:10'), station: '' };
  const out = { clarificationId: 'c', word: 'not of the core' as const, reason: 'Probe in the air', made };
  const back = { ...out, clarificationId: 'd', word: 'as recorded' as const, reason: 'It was in' };
  const readings = [
    aReading('10:00', 120, { clarifications: [out] }),
    aReading('10:05', 130, { clarifications: [out, back] }),
    aReading('10:10', 140),
  ];
  expect(linesOfLot(aLot({ controlPoints: [aPoint(cook, { readings })] }), sheetInEnglish).slice(1)).toMatchObject([
    { value: '120 °F', isLeftOut: true, said: ['Not of the core, says Ida Marsh: Probe in the air'] },
    {
      value: '130 °F',
      isLeftOut: false,
      said: ['Not of the core, says Ida Marsh: Probe in the air', 'As recorded, says Ida Marsh: It was in'],
    },
    { value: '140 °F', isLeftOut: false, said: undefined },
  ]);
});
