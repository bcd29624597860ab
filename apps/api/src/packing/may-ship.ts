import type { Standing } from '@larderbook/contracts';
import type { Stock } from './stock.queries';

type Stands = { standing: Standing; because: string };
export type MayShip = { mayShip: boolean; because: string };

/** Only a cleared lot ships, and of it no more than was not condemned. */
export function mayShip({ standing, because }: Stands, stock: Stock): MayShip {
  if (standing !== 'cleared' && standing !== 'shipped') return { mayShip: false, because };
  if (leftIn(stock) <= 0n && stock.condemned > 0n)
    return { mayShip: false, because: 'What is left of it was condemned.' };
  return { mayShip: true, because };
}

/** Femtograms in packages that may still leave. */
export const leftIn = ({ packed, shipped, condemned }: Stock): bigint => packed - shipped - condemned;
