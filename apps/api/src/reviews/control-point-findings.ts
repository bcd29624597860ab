import type { ControlPointOnLot, Finding } from '@larderbook/contracts';
import { asWorded, sentence } from '../platform/account';

/** How a control point stands, and what keeps it from being met or settled. */
export function controlPointFinding(point: ControlPointOnLot): Finding {
  const { controlPointId, name, monitoring } = point.controlPoint;
  const about = { about: 'control-point' as const, controlPointId };
  switch (point.stands) {
    case 'met':
      return { ...about, kind: 'met', what: [sentence('point-met', { point: name })], blocks: false };
    case 'not-started': {
      const what = [sentence('point-not-recorded', { point: name })];
      return { ...about, kind: 'missing', what, next: asWorded(monitoring.what), blocks: true };
    }
    case 'running': {
      const what = [sentence('point-running', { point: name })];
      return { ...about, kind: 'missing', what, next: [sentence('finish-then-review')], blocks: true };
    }
    case 'missed':
    case 'undetermined': {
      const what = [sentence(`point-${point.stands}${point.settled ? '-settled' : ''}`, { point: name }), ...becauseOf(point)];
      if (point.settled) return { ...about, kind: 'settled', what, blocks: false };
      return { ...about, kind: point.stands, what, next: [nextFor(point)], blocks: true };
    }
  }
}

const becauseOf = ({ judged }: ControlPointOnLot): Finding['what'] =>
  judged.flatMap(({ verdict }) => (verdict.kind === 'met' ? [] : [{ verdict, tells: 'because' as const }]));

function nextFor({ controlPoint, openDeviationId, endedAt }: ControlPointOnLot) {
  if (openDeviationId) return sentence('settle-its-deviation');
  if (controlPoint.takenAs === 'curve' && !endedAt) return sentence('finish-then-review');
  return sentence('open-a-deviation');
}
