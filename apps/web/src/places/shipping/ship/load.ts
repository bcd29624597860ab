import { recordShipment } from '@larderbook/contracts';
import type { Entry } from '../../../outbox/entry';
import type { Packing } from '../stock/packing';

/** Packages of one packing run, which is on the load once. */
export type LoadLine = { packing: Packing; count: number };

export function putOn(load: readonly LoadLine[], line: LoadLine): LoadLine[] {
  const isOn = load.some(({ packing }) => packing.packingId === line.packing.packingId);
  return isOn ? load.map((each) => (each.packing.packingId === line.packing.packingId ? line : each)) : [...load, line];
}

export const takeOff = (load: readonly LoadLine[], packingId: string): LoadLine[] =>
  load.filter(({ packing }) => packing.packingId !== packingId);

export const loadGrams = (load: readonly LoadLine[]): number =>
  load.reduce((sum, { packing, count }) => sum + packing.net.grams * count, 0);

export const loadCount = (load: readonly LoadLine[]): number => load.reduce((sum, { count }) => sum + count, 0);

/** Keyed by packing; the server names a line by its place: `lines.0`. */
export function lineProblems(load: readonly LoadLine[], fields: Record<string, string>): Map<string, string> {
  return new Map(
    load.flatMap(({ packing }, index) => {
      const said = Object.entries(fields).find(([field]) => field === `lines.${index}` || field.startsWith(`lines.${index}.`))?.[1];
      return said ? [[packing.packingId, said] as const] : [];
    }),
  );
}

/** Less what waits on this device to be sent as shipped. A correction takes the place of what was counted already. */
export function leftBeside(packings: Packing[], unsent: Entry[]): Packing[] {
  const gone = new Map<string, number>();
  for (const { path, body } of unsent) {
    const { data } = recordShipment.body.safeParse(path.startsWith('/shipments/') ? body : undefined);
    if (!data || data.amends !== undefined) continue;
    for (const { packingId, count } of data.lines) gone.set(packingId, (gone.get(packingId) ?? 0) + count);
  }
  return packings
    .map((packing) => ({ ...packing, left: packing.left - (gone.get(packing.packingId) ?? 0) }))
    .filter(({ left }) => left > 0);
}
