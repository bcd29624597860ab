import { coded, wordFor } from '../limits/coded';
import type { Coded, Figures } from '../limits/verdict';
import { degreesOf, timeOf } from '../quantity/quantities';
import type { Degrees } from '../quantity/temperature';
import type { Finding } from '../thermal/finding';

/** No instant where the reading had none. */
export type ToldFinding = Pick<Finding, 'kind' | 'probe' | 'readings' | 'treatment'> & {
  found: Coded;
  whatToDo: Coded;
  from?: number;
  to?: number;
  readingIds?: string[];
};

export function tellFinding(finding: Finding): ToldFinding {
  const { kind, probe, from, to, readings, treatment, ids } = finding;
  return {
    ...{ kind, probe: probe || undefined, from: finite(from), to: finite(to), readings, treatment, readingIds: ids },
    found: coded('found', figuresOf(finding)),
    whatToDo: { code: `${wordFor('finding', kind).code}.next` },
  };
}

function figuresOf({ kind, from, to, readings, values: [first, last] }: Finding): Figures {
  const [one, other] = [first, last].filter(isTold).map(degreesOf);
  const isMoved = other !== undefined && (other.value !== one?.value || other.unit !== one.unit);
  return {
    kind: wordFor('finding', kind),
    ...(to - from > 0 && { time: timeOf(to - from) }),
    ...(one ? { first: one, ...(isMoved && { last: other }) } : { count: readings }),
  };
}

const isTold = (value: Degrees | undefined): value is Degrees => Number.isFinite(value?.hundredths);
const finite = (instant: number): number | undefined => (Number.isFinite(instant) ? instant : undefined);
