import type { InputOf, recordReceipt } from '@larderbook/contracts';
import { degreesOf, askAboutReceipt, degrees, isOfKind, judgeRange, type Degrees, type RangeLimit, type Verdict } from '@larderbook/haccp';
import { Problem } from '../platform/problem';
import { told, type Told } from '../platform/told';
import type { ItemNow } from '../products/items-now';

type Delivery = Pick<InputOf<typeof recordReceipt>, 'temperature' | 'sure' | 'decision' | 'reason'>;
export type JudgedDelivery = {
  limit?: RangeLimit;
  verdict?: Verdict;
  /** The temperature was implausible, and the person was sure. */
  isUnusual: boolean;
  /** Accepted although the limit was not met; doubt is not met. */
  isMiss: boolean;
};

/**
 * Throws `temperature-missing`, `implausible-value` or `reason-missing`. A delivery refused at the door needs no
 * temperature.
 */
export function judgeDelivery({ temperature, sure, decision, reason }: Delivery, item: ItemNow): JudgedDelivery {
  const limit = isOfKind(item.receivingLimit, 'range') ? item.receivingLimit : undefined;
  const isAccepted = decision === 'accepted';
  if (!temperature) {
    if (limit && isAccepted) throw new Problem('temperature-missing', told('received-by-temperature', { name: item.name }));
    if (!isAccepted && !reason) throw new Problem('reason-missing', told('say-why-refused'));
    return { limit, isUnusual: false, isMiss: false };
  }

  const measured = degrees(temperature.value, temperature.unit);
  const question = askAboutReceipt(measured, limit);
  if (question && !sure) throw new Problem('implausible-value', asking(question, measured, item));
  const verdict = limit && judgeRange(measured, limit);
  const isMiss = isAccepted && verdict !== undefined && verdict.kind !== 'met';
  if (!isAccepted && !reason) throw new Problem('reason-missing', told('say-why-refused'));
  if (isMiss && !reason)
    throw new Problem('reason-missing', [
      told('not-met-at-receipt', { name: item.name, read: degreesOf(measured) }),
      told('say-why-accepted'),
    ]);
  return { limit, verdict, isUnusual: question !== undefined, isMiss };
}

const asking = ({ meant }: { meant?: Degrees }, entered: Degrees, { name }: ItemNow): Told[] => [
  told('unusual-at-receipt', { entered: degreesOf(entered), item: name }),
  meant ? told('did-you-mean', { meant: degreesOf(meant) }) : told('check-thermometer'),
];
