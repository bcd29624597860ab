import type { Quantity } from '@larderbook/haccp';
import type { Entry } from './entry';

/** Fields in which a person writes, of all that is recorded on the floor. */
const written: ReadonlySet<string> = new Set([
  ...['reason', 'seen', 'note', 'description', 'document', 'statement', 'method', 'supplierLot'],
  ...['cause', 'control', 'prevention', 'product', 'different', 'done'],
  ...['segregation', 'acceptability', 'reassessment', 'reassessedBy'],
]);

/** What a person wrote and weighed, in the order of the record: codes and ids are left out. */
export function saidIn(body: Entry['body']): (string | Quantity)[] {
  return Object.entries(body ?? {}).flatMap(([field, said]) => {
    if (typeof said === 'string') return written.has(field) && said !== '' ? [said] : [];
    if (isQuantity(said)) return [said];
    return typeof said === 'object' && said !== null ? saidIn(said as Record<string, unknown>) : [];
  });
}

const isQuantity = (said: unknown): said is Quantity =>
  typeof said === 'object' && said !== null && 'value' in said && 'unit' in said && typeof said.value === 'number';
