import { asksForHumidity, recordsMoment, type ControlPoint, type CorrectiveAction } from '@larderbook/contracts';
import type { HumidityKept } from '@larderbook/haccp';
import type { CookedProduct } from '../products/demo-product';
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
  const humidity = asksForHumidity(point) ? humidityOf(lot) : undefined;
  lot.read(point, minutesAfter(at, wrongLabel ? 12 : 0), { answer: true, seen: seenAt(point), humidity });
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
    ? 'Dampers shut; times on the oven card.'
    : 'Compared with the approved label.';

/** The oven is shut 20 minutes after the pieces go in, for longer than half of the cook; as its own curve says. */
function humidityOf(lot: LotBeingMade): HumidityKept {
  const cooked = (lot as LotBeingMade<CookedProduct>).product.cook.at(-1)?.[0] ?? 0;
  const intoOven = lot.after(55);
  return {
    how: 'sealed oven',
    intoOven: intoOven.toISOString(),
    from: minutesAfter(intoOven, 20).toISOString(),
    minutes: Math.ceil(cooked / 2) + 15,
  };
}

const coldEnough = (): Value => ({ value: 36.4, unit: '°F' });

/** By the names of the shop's instruments; what a laboratory says has none. */
const instrumentFor: Partial<Record<Value['unit'], string>> = { '°F': 'probe', aw: 'waterActivity' };
