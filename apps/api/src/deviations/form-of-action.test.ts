import { expect, test } from 'vitest';
import { formOfAction } from './form-of-action';

test.each([
  ['a missed limit of a critical control point', 'critical', true, 'critical'],
  ['a missed limit of a prerequisite', 'prerequisite', true, 'prerequisite'],
  ['a miss that no control point stands for', undefined, true, 'unforeseen'],
  ['something seen at a critical control point, no limit missed', 'critical', false, 'unforeseen'],
  ['something seen at a prerequisite', 'prerequisite', false, 'unforeseen'],
  ['something seen anywhere', undefined, false, 'unforeseen'],
] as const)('%s', (_case, kind, isMiss, form) => {
  expect(formOfAction(kind, isMiss)).toBe(form);
});
