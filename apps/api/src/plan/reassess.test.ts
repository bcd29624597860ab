import { limitSetById, type CriticalLimit } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { reassessments } from './reassess';
import { listStarters } from './starter-plans';

const now = new Date('2026-11-28T09:00:00Z');

/** A starter plan whose first control point carries one figure of a set. */
function planWith(setId: string, rowId: string) {
  const limit = limitSetById(setId)?.rows.find(({ id }) => id === rowId)?.limit;
  const [content] = listStarters().starters.map((starter) => starter.content);
  const [point] = content?.controlPoints ?? [];
  if (!content || !point || !limit || limit.kind === 'figure') throw new Error(`${setId} has no limit ${rowId}`);
  const held = { limitId: point.limits[0]?.limitId ?? '', limit: limit as CriticalLimit };
  return { ...content, controlPoints: [{ ...point, name: 'Curing salt', limits: [held] }] };
}

test('a figure that a newer edition prints otherwise is a reason to reassess, with both figures', () => {
  expect(reassessments(planWith('european-union-2008', 'nitrite-heat-treated'), now)).toEqual([
    expect.stringMatching(/^Curing salt: built on .*until 8 October 2025; European Union, edition .* prints ≤ 80 mg\/kg as NO₂ ion for it instead of ≤ 150 mg\/kg/),
  ]);
});

test('a figure of the latest edition is none, nor is one before the newer edition counts', () => {
  expect(reassessments(planWith('european-union-2025', 'nitrite-heat-treated'), now)).toEqual([]);
  const before = new Date('2020-01-01T00:00:00Z');
  expect(reassessments(planWith('european-union-2008', 'nitrite-heat-treated'), before)).toEqual([]);
});

test('an edition that only asks for other conditions says so', () => {
  expect(reassessments(planWith('us-inspected-1999', 'cooked-meat-6.5-log'), now).join()).toContain('asks for other conditions');
});
