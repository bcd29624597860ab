import { planContent, type PlanContent } from '@larderbook/contracts';
import { describe, expect, test } from 'vitest';
import { supported } from '../with-support.test-data';
import { english, inEnglish } from '../../platform/in-english.test-data';
import { planFaults } from '../plan-faults';
import { listStarters } from '.';

const starters = listStarters(english).starters;
const inSpanish = listStarters({ ...english, language: 'es' }).starters;
const idsOf = ({ steps, controlPoints }: PlanContent) => [
  ...steps.map(({ stepId }) => stepId),
  ...controlPoints.flatMap(({ controlPointId, limits }) => [controlPointId, ...limits.map(({ limitId }) => limitId)]),
];

describe.each([...starters, ...inSpanish])('the plan to start from: $title', ({ content }) => {
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
    expect(content.steps[0]?.name).toMatch(/^(Receiving meat|Recepción de la carne)$/);
    expect(content.steps.at(-1)?.name).toMatch(/^(Shipping|Envío)$/);
    expect(content.notes).toMatch(/does not validate a process|no valida un proceso/);
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
  const again = listStarters(english).starters;
  const ids = [...starters, ...again].flatMap(({ content }) => idsOf(content));
  expect(new Set(ids).size).toBe(ids.length);
});

test('in Spanish each is the same plan, and leaves nothing in English but citations and the names of laws', () => {
  const bones = ({ steps, controlPoints }: PlanContent) => [
    steps.map(({ hazards }) => hazards.map(({ kind, likely }) => [kind, likely])),
    controlPoints.map(({ kind, takenAs, frequency, probes }) => [kind, takenAs, frequency, probes]),
  ];
  expect(inSpanish.map(({ content }) => bones(content))).toEqual(starters.map(({ content }) => bones(content)));
  const english = /\b(the|and|with|from|is|are|of|every|before)\b/i;
  const written = inSpanish.flatMap(({ title, about, content }) => [title, about, ...textsOf(content)]);
  expect(written.filter((text) => english.test(text))).toEqual([]);
});

/** All that is written in a plan but the limits and their sources, and names that point to other parts. */
function textsOf(part: unknown): string[] {
  if (typeof part === 'string') return [part];
  if (typeof part !== 'object' || part === null) return [];
  return Object.entries(part).flatMap(([key, value]) =>
    /^(limits|probes|process|kind|takenAs|.*Id|unit)$/.test(key) ? [] : textsOf(value),
  );
}
