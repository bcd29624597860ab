import type { Deviation } from '@larderbook/contracts';
import type { Entry } from '../../outbox/entry';

/** What was recorded of the deviation and is on this device only. */
export function unsentAbout(deviation: Deviation, entries: Entry[]): Entry[] {
  const { deviationId, actions, dispositions, closing } = deviation;
  const ids = new Set([
    deviationId,
    ...actions.map(({ actionId }) => actionId),
    ...dispositions.map(({ dispositionId }) => dispositionId),
    closing?.closingId,
  ]);
  return entries.filter(({ body }) => named(body ?? {}).some((id) => typeof id === 'string' && ids.has(id)));
}

const named = ({ deviationId, deviationIds, dispositionId, closingId, amends }: Record<string, unknown>): unknown[] => [
  ...[deviationId, dispositionId, closingId, amends],
  ...(Array.isArray(deviationIds) ? deviationIds : []),
];

/** The words of an action that the server refused, to go on from. */
export const refusedAction = (unsent: Entry[]): Entry | undefined =>
  unsent.find(({ state, path, body }) => state === 'parked' && path.startsWith('/corrective-actions/') && body?.amends === undefined);
