import { planContent, type PlanContent } from '@larderbook/contracts';
import { describe, expect, test } from 'vitest';
import { supported } from '../with-support.test-data';
import { inEnglish } from '../../platform/in-english.test-data';
import { planFaults } from '../plan-faults';
import { listStarters } from '.';

const starters = listStarters().starters;
const idsOf = ({ steps, controlPoints }: PlanContent) => [
  ...steps.map(({ stepId }) => stepId),
  ...controlPoints.flatMap(({ controlPointId, limits }) => [controlPointId, ...limits.map(({ limitId }) => limitId)]),
];

describe.each(starters)('the plan to start from: $title', ({ content }) => {
  test('passes the contract unchanged', () => {
    expect(planContent.parse(content)).toEqual(content);
  });

  test('lacks nothing but the shop’s own words on an option of 1999', () => {
    expect(planFaults(content).filter((fault) => !inEnglish(fault).includes('Since 14 December 2022'))).toEqual([]);
    expect(planFaults(supported(content))).toEqual([]);
  });

  test('rests on no figure that nobody has confirmed', () => {
    const limits = content.controlPoints.flatMap((point) => point.limits.map(({ limit }) => limit));
    expect(limits.filter(({ source }) => !source.confirmed)).toEqual([]);
  });

  test('goes from receiving to shipping and says that it has to be validated', () => {
    expect(content.steps[0]?.name).toBe('Receiving meat');
    expect(content.steps.at(-1)?.name).toBe('Shipping');
    expect(content.notes).toContain('does not validate a process');
  });

  test('says of everything that is read how often at least, so that a review can hold it against that', () => {
    const read = content.controlPoints.filter(({ takenAs }) => takenAs !== 'weighings');
    expect(read.filter(({ frequency }) => !frequency).map(({ name }) => name)).toEqual([]);
  });

  test('finds hazards of all three kinds', () => {
    const kinds = content.steps.flatMap(({ hazards }) => hazards.map(({ kind }) => kind));
    expect([...new Set(kinds)].sort()).toEqual(['biological', 'chemical', 'physical']);
  });
});

test('there is one for each kind of product the shop may begin with', () => {
  expect(starters.map(({ process }) => process)).toEqual(['cured smoked cooked', 'cook-chill', 'cook-chill', 'roast', 'cured dried']);
});

test('of a dish with pieces the core of a piece is bound to its speed, a soup or a sauce has none until it stands in its tray', () => {
  const piecesOf = (title: string) =>
    starters
      .find((one) => one.title === title)
      ?.content.controlPoints.filter(({ takenAs }) => takenAs === 'curve')
      .map(({ piece }) => piece?.shape);
  expect(piecesOf('Soup or sauce, stirred and chilled')).toEqual(['stirred', 'slab']);
  expect(piecesOf('Cooked and chilled dish')).toEqual([undefined, 'slab']);
});

test('two copies share no id, and none stands twice in one', () => {
  const again = listStarters().starters;
  const ids = [...starters, ...again].flatMap(({ content }) => idsOf(content));
  expect(new Set(ids).size).toBe(ids.length);
});
