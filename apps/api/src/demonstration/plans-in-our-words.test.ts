import { describe, expect, test } from 'vitest';
import { english } from '../platform/in-english.test-data';
import { listStarters } from '../products/starter-plans';
import { planFaults } from '../products/plan-faults';
import { planOf } from '../../../../prisma/demo/furnish';
import { products, type ProductKey } from '../../../../prisma/demo/products';

/** What a plan to start from says to whoever adapts it. */
const toWhoeverAdapts =
  /plan to start from|common practice, no source|\badapt\b|\byou(?:r|rs)?\b|among the published|not confirmed|choose it|take this control point out|treat it as likely|as its card says|or what it says|or a laboratory|or the bag|Without such|no proof of safety|does not validate/i;

describe.each(Object.keys(products) as ProductKey[])('the plan of the demonstration for %s', (key) => {
  const starter = listStarters(english).starters.find(({ process }) => process === products[key].fields.process);
  if (!starter) throw new Error('There is no plan to start from');
  const plan = planOf(key, starter.content);

  test('holds nothing that the plan to start from says to whoever adapts it', () => {
    expect(textsOf(starter.content).filter((text) => toWhoeverAdapts.test(text))).not.toEqual([]);
    expect(textsOf(plan).filter((text) => toWhoeverAdapts.test(text))).toEqual([]);
  });

  test('lacks nothing, and states what its instruments may be wrong by', () => {
    expect(planFaults(plan)).toEqual([]);
    const measured = plan.controlPoints.filter(
      ({ takenAs, limits }) => takenAs !== 'attestation' && limits.some(({ limit }) => limit.kind !== 'figure'),
    );
    expect(measured.filter(({ errors }) => !errors).map(({ name }) => name)).toEqual([]);
  });
});

/** All that is written in a plan but the sources of its limits. */
function textsOf(part: unknown): string[] {
  if (typeof part === 'string') return [part];
  if (typeof part !== 'object' || part === null) return [];
  return Object.entries(part).flatMap(([key, value]) => (key === 'source' ? [] : textsOf(value)));
}
