import { expect, test } from 'vitest';
import { aReading, at as atTime, ms } from '../test-lots/a-lot';
import { aJudged, aPoint, cooling, dwell } from '../test-lots/a-point';
import { inEnglish } from '../../../ui/in-english.test-data';
import { tell } from '../../../ui/tell-here.test-data';
import { sayPoint } from './say-point';

const chill = { name: 'Chill', takenAs: 'curve' as const, limits: [cooling] };
const running = [
  aJudged(cooling, {
    kind: 'undetermined',
    running: { code: 'cooling', figures: { stage: '130 → 80 °F', to: '80 °F' }, deadline: ms('13:30') },
  }),
];

const twelveMinutes = { value: '720000', unit: 'ms' as const };
const at = { value: '145', unit: '°F' as const };
const held = { finding: 'dwell-held', figures: { held: twelveMinutes, needed: twelveMinutes, spare: twelveMinutes, at } };
const tooCold = {
  kind: 'missed' as const,
  finding: 'dwell-too-cold',
  figures: { hottest: { value: '136.5', unit: '°F' as const }, at, short: { value: '8.5', unit: '°F' as const } },
};

test.each([
  ['nothing was recorded', aPoint(chill), 'not started'],
  ['its time runs', aPoint(chill, { stands: 'running', readings: [aReading('12:00', 128)], judged: running }), '30 min left'],
  [
    'it may come too late',
    aPoint(chill, {
      stands: 'running',
      readings: [aReading('12:00', 128)],
      judged: running,
      forecast: {
        use: 'advice, never acceptance',
        limitId: '',
        target: { value: '80', unit: '°F' },
        state: 'at risk',
        because: [],
        next: [],
        arrival: {},
        medium: { celsius: 1, from: 'measured' },
        takeMoreReadings: false,
      },
    }),
    '30 min left, at risk',
  ],
  ['it runs without a time', aPoint(chill, { stands: 'running', readings: [aReading('12:00', 128)] }), 'running'],
  [
    'it is met and finished',
    aPoint(chill, {
      stands: 'met',
      endedAt: atTime('12:50'),
      judged: [aJudged(dwell, held)],
    }),
    'met, 12 min to spare',
  ],
  ['it is met and nobody has finished it', aPoint(chill, { stands: 'met', readings: [aReading('12:00', 38)] }), 'met, not finished'],
  [
    'it is missed',
    aPoint(chill, {
      stands: 'missed',
      endedAt: atTime('12:50'),
      judged: [aJudged(dwell, tooCold)],
    }),
    'missed, 8.5 °F short',
  ],
  [
    'its miss was dealt with',
    aPoint(chill, {
      stands: 'missed',
      settled: true,
      endedAt: atTime('12:50'),
      judged: [aJudged(dwell, tooCold)],
    }),
    'missed, 8.5 °F short, dealt with',
  ],
  ['doubt was dealt with', aPoint(chill, { stands: 'undetermined', settled: true, endedAt: atTime('12:50') }), 'undetermined, dealt with'],
])('when %s it says so', (_case, point, words) => {
  expect(sayPoint(point, ms('13:00'), inEnglish('lots'), inEnglish('shared'), tell).words).toBe(words);
});
