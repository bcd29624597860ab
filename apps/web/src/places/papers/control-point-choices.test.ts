import { expect, test } from 'vitest';
import { inEnglish } from '../../ui/in-english.test-data';
import { controlPointChoices } from './control-point-choices';

const aPoint = (controlPointId: string, name: string, planTitle = 'Plan') => ({
  controlPointId,
  name,
  kind: 'critical' as const,
  productName: 'Sausage',
  planTitle,
});

test('control points that read alike name their plan, the others do not', () => {
  expect(
    controlPointChoices(
      [aPoint('1', 'Chilling', 'Small links'), aPoint('2', 'Chilling', 'Large links'), aPoint('3', 'Cooking')],
      inEnglish('papers'),
    ),
  ).toEqual([
    { value: '1', name: 'Sausage: Chilling (Small links)' },
    { value: '2', name: 'Sausage: Chilling (Large links)' },
    { value: '3', name: 'Sausage: Cooking' },
  ]);
});
