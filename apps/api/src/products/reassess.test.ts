import { limitSetById, type CriticalLimit, type WhereItWorks } from '@larderbook/haccp';
import { describe, expect, test } from 'vitest';
import { figuresFromElsewhere as elsewhere } from './figures-from-elsewhere';
import { reassessments as askedFor } from './reassess';
import { english } from '../platform/in-english.test-data';
import { reasonsIn } from './reasons-in';
import { listStarters } from './starter-plans';

const now = new Date('2026-11-28T09:00:00Z');
const reasons = reasonsIn(english);
type Content = Parameters<typeof askedFor>[0];
const figuresFromElsewhere = (content: Content, where: WhereItWorks) => elsewhere(content, where, reasons);
const reassessments = (content: Content, at = now, where: WhereItWorks = {}) => askedFor(content, { now: at, where }, reasons);

/** A starter plan whose first control point carries one figure of a set. */
function planWith(setId: string, rowId: string) {
  const limit = limitSetById(setId)?.rows.find(({ id }) => id === rowId)?.limit;
  const [content] = listStarters(english).starters.map((starter) => starter.content);
  const [point] = content?.controlPoints ?? [];
  if (!content || !point || !limit || limit.kind === 'figure') throw new Error(`${setId} has no limit ${rowId}`);
  const held = { limitId: point.limits[0]?.limitId ?? '', limit: limit as CriticalLimit };
  return { ...content, controlPoints: [{ ...point, name: 'Curing salt', limits: [held] }] };
}

test('a figure that a newer edition prints otherwise is a reason to reassess, with both figures', () => {
  expect(reassessments(planWith('european-union-2008', 'nitrite-heat-treated'))).toEqual([
    expect.stringMatching(
      /^Curing salt: built on .*until 8 October 2025\. European Union, edition .* prints ≤ 80 mg\/kg as NO₂ ion for it instead of ≤ 150 mg\/kg/,
    ),
  ]);
});

test('a figure of the latest edition is none, nor is one before the newer edition counts', () => {
  expect(reassessments(planWith('european-union-2025', 'nitrite-heat-treated'))).toEqual([]);
  const before = new Date('2020-01-01T00:00:00Z');
  expect(reassessments(planWith('european-union-2008', 'nitrite-heat-treated'), before)).toEqual([]);
});

test('an edition that only asks for other conditions says so', () => {
  expect(reassessments(planWith('us-inspected-1999', 'cooked-meat-6.5-log')).join()).toContain('asks for other conditions');
});

describe('beside the edition in use', () => {
  const retail = (limitSet?: string): WhereItWorks => ({ jurisdiction: 'US, retail and catering', limitSet });
  const holding = planWith('us-retail-2022', 'cold-holding');

  test('a figure that it prints as well is no reason, whatever other editions print', () => {
    expect(reassessments(holding, now, retail())).toEqual([]);
    expect(reassessments(planWith('us-retail-2022', 'cook-poultry'), now, retail('us-retail-2022'))).toEqual([]);
  });

  test('a figure that it prints otherwise is named with both', () => {
    const poultry = planWith('us-retail-2022', 'cook-poultry');
    expect(reassessments(poultry, now, retail('us-retail-2013'))).toEqual([
      'Curing salt: built on US, retail and catering, Food Code 2022. US, retail and catering, Food Code 2013, in use ' +
        'here, prints 15 s for 165 °F instead of no holding time, as far as is known. Reassess the plan.',
    ]);
    expect(reassessments(holding, now, { jurisdiction: 'Canada' }).join()).toMatch(
      /^Curing salt: .*\. Canada, .*, in use here, prints ≤ 4 °C for it instead of ≤ 41 °F \(5 °C\)\. Reassess the plan\.$/,
    );
  });

  test('a reader of Spanish is told so in Spanish, the title of a set too', () => {
    const asked = { now, where: retail('us-retail-2013') };
    expect(askedFor(planWith('us-retail-2022', 'cook-poultry'), asked, reasonsIn({ ...english, language: 'es' }))).toEqual([
      'Curing salt: se basa en EE. UU., venta al por menor y servicio de comidas, Food Code 2022. EE. UU., venta al por menor y servicio de comidas, Food Code 2013, en uso ' +
        'aquí, imprime 15 s para 165 °F en lugar de sin tiempo de mantenimiento, hasta donde se sabe. Reevalúe el plan.',
    ]);
  });

  test('a figure of the edition in use that a newer one prints otherwise is a reason, and says which is in use', () => {
    const where: WhereItWorks = { jurisdiction: 'European Union', limitSet: 'european-union-2008' };
    expect(reassessments(planWith('european-union-2008', 'nitrite-heat-treated'), now, where)).toEqual([
      expect.stringMatching(/until 8 October 2025, in use here\. European Union, edition from .* prints ≤ 80 mg\/kg/),
    ]);
  });

  test('a figure that several editions print alike is named by the newest of them', () => {
    expect(reassessments(planWith('us-inspected-1999', 'nitrite-comminuted'), now, { jurisdiction: 'Canada' })).toEqual([
      expect.stringMatching(/^Curing salt: built on US, inspected establishment, edition December 2021\. Canada, /),
    ]);
  });

  test('a row of a table that it does not have is named', () => {
    const where: WhereItWorks = { jurisdiction: 'Canada' };
    expect(reassessments(planWith('us-inspected-2021', 'cooked-meat-6.5-log'), now, where).join()).toContain(
      'in use here, has no row for 130 °F',
    );
  });

  test('what it says nothing about is named once, and what nobody has read in it is not known', () => {
    const cured = planWith('us-inspected-2021', 'nitrite-comminuted');
    expect(reassessments(cured, now, retail())).toEqual([]); // nothing is printed otherwise
    expect(figuresFromElsewhere(cured, retail())).toEqual([
      'Figures from other sets: Curing salt. US, retail and catering, Food Code 2022, in use here, has no figure on ' +
        'these. Keep your support on file.',
    ]);
    for (const where of [{}, retail('us-retail-2013')]) expect(figuresFromElsewhere(cured, where)).toEqual([]);
    expect(figuresFromElsewhere(holding, retail())).toEqual([]);
    expect(reassessments(holding, now, retail('us-retail-2013')).join()).toMatch(
      /was read in part, and not on these: whether it prints otherwise is not known here\. Reassess the plan\.$/,
    );
  });

  test('where the shop has not said where it works, nothing is assumed', () => {
    expect(reassessments(planWith('us-retail-2022', 'cook-poultry'), now, {})).toEqual([]);
  });

  test('a figure of one’s own stands on its own support', () => {
    const source = { citation: 'Ours', edition: '', confirmed: true };
    const limit: CriticalLimit = { kind: 'attestation', statement: 'Seen.', source };
    const [point] = holding.controlPoints;
    const own = { ...holding, controlPoints: point ? [{ ...point, limits: [{ limitId: '', limit }] }] : [] };
    expect([...reassessments(own, now, retail()), ...figuresFromElsewhere(own, retail())]).toEqual([]);
  });
});
