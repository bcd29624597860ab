import type { Standing } from '@larderbook/contracts';
import type { LotHolds } from '../lots/lot-holds.queries';

type Stands = { standing: Standing; because: string };
type Stock = Pick<LotHolds, 'packed' | 'shipped' | 'aside'>;
export type MayShip = { mayShip: boolean; because: string };

/** Only a cleared lot ships, and of it no more than was neither condemned nor decided to be reworked. */
export function mayShip({ standing, because }: Stands, stock: Stock): MayShip {
  if (standing !== 'cleared' && standing !== 'shipped') return { mayShip: false, because };
  if (leftIn(stock) > 0n || asideIn(stock) === 0n) return { mayShip: true, because };
  const { toRework } = stock.aside;
  return { mayShip: false, because: `What is left of it was ${toRework > 0n ? 'condemned or is to be reworked' : 'condemned'}.` };
}

/** Femtograms in packages that may still leave. */
export const leftIn = (stock: Stock): bigint => stock.packed - stock.shipped - asideIn(stock);

/** Femtograms in packages that decisions keep from leaving. */
export const asideIn = ({ aside }: Stock): bigint => aside.condemned + aside.toRework + aside.opened;
