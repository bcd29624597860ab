import { recordsMoment, type ControlPoint, type CorrectiveAction } from '@larderbook/contracts';
import { minutesAfter } from '../story';
import type { Entered, LotBeingMade } from './lot-being-made';
import { settle } from './settle';

type Value = Extract<Entered, { value: number }>;

/** Whatever is asked for once: a value well within its limit, or a yes with what was seen. */
export function measureAndAnswer(
  lot: LotBeingMade,
  at: Date,
  valueAt: (point: ControlPoint) => Value = coldEnough,
): void {
  for (const point of lot.controlPoints) {
    if (point.takenAs === 'value') {
      const value = valueAt(point);
      lot.read(point, at, value, { instrument: instrumentFor[value.unit] });
    }
    if (point.takenAs === 'attestation' && !recordsMoment(point)) answer(lot, point, at);
  }
}

function answer(lot: LotBeingMade, point: ControlPoint, at: Date): void {
  const wrongLabel = lot.plan.mishap === 'label not right';
  if (wrongLabel) {
    lot.read(point, at, { answer: false, seen: 'The roll on the labeller was that of the stew.' });
    settle(lot, minutesAfter(at, 4), wrongRoll(point), [
      { decision: 'condemn', pounds: 2.4, reason: 'The wrapping of two packages tore as the labels came off, and they had lain on the table.' },
      { decision: 'release', basis: 'worked on and measured again', reason: 'Every other package of the run was looked at again and relabelled.' },
    ]);
  }
  lot.read(point, minutesAfter(at, wrongLabel ? 12 : 0), { answer: true, seen: seenAt(point) });
}

function wrongRoll({ kind }: ControlPoint): CorrectiveAction {
  const product = 'Eleven packages were opened and relabelled; all labels were counted.';
  const different = 'The roll is locked away with the recipe card, and the next one is signed out.';
  const cause = 'The label roll was not changed after the last product. It was taken off.';
  const control = 'The right roll was put on and the first ten labels compared with the approved label.';
  if (kind === 'prerequisite') return { form: 'prerequisite', done: `${cause} ${control}`, product, different };
  const prevention = 'The roll is taken off the labeller at the end of every run.';
  return { form: 'critical', cause, control, prevention, product, different };
}

/** What was looked at to answer with yes. */
const seenAt = ({ name }: ControlPoint): string =>
  /humidity/i.test(name)
    ? 'Dampers shut for the first hour and a half, steam on twice; times on the oven card.'
    : 'Compared with the approved label.';

const coldEnough = (): Value => ({ value: 36.4, unit: '°F' });

/** By the names of the shop's instruments; what a laboratory says has none. */
const instrumentFor: Partial<Record<Value['unit'], string>> = { '°F': 'probe', aw: 'waterActivity' };
