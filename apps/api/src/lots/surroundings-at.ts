import type { ControlPoint } from '@larderbook/contracts';
import { degrees, type Surroundings } from '@larderbook/haccp';
import { curveOf, type Taken } from './judge-reading';

export function surroundingsAt(
  { surroundings }: Pick<ControlPoint, 'surroundings'>,
  read: readonly Taken[] = [],
): Surroundings | undefined {
  if (!surroundings) return undefined;
  const { setPoint } = surroundings;
  return { setPoint: setPoint && degrees(setPoint.value, setPoint.unit), readings: curveOf(read) };
}
