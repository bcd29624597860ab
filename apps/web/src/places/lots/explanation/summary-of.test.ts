import { expect, test } from 'vitest';
import { inEnglish } from '../../../ui/in-english.test-data';
import { sheetInEnglish } from '../sheet/in-english.test-data';
import { summaryOf } from './summary-of';

const [say, { figures }] = [inEnglish('judging'), sheetInEnglish];

const empty = {
  unit: '°F' as const,
  probes: [],
  surroundings: [],
  lines: [],
  stages: [],
  crossings: [],
  lethality: [],
  arrival: undefined,
};

test('a drawing is said in sentences', () => {
  const points = [
    { at: 0, value: 140.04 },
    { at: 1, value: 150 },
    { at: 2, value: 39 },
  ];
  expect(
    summaryOf(
      {
        ...empty,
        probes: [
          { probe: 'core 1', points },
          { probe: '', points: points.slice(0, 1) },
          { probe: 'core 2', points: [] },
        ],
        lines: [{ label: '80 °F', value: 80 }],
        stages: [{ label: '130 → 80 °F', startAt: 0, kind: 'missed' }],
        crossings: [{ label: '130 °F', value: 130, after: 0, by: 1, straight: 0.5 }],
        arrival: { label: '40 °F', value: 40, state: 'at risk' as const },
      },
      say,
      figures,
    ),
  ).toBe(
    'core 1: 3 readings from 140 °F to 39 °F, at most 150 °F. Core: 1 reading from 140 °F to 140 °F, at most 140 °F. ' +
      'Lines drawn: 80 °F. 130 → 80 °F: missed. Passed: 130 °F. 40 °F expected: at risk.',
  );
});

test('one of nothing says nothing', () => {
  expect(summaryOf(empty, say, figures)).toBe('');
});
