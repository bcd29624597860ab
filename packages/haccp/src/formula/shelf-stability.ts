import { scaled } from '../quantity/decimal';
import { asGiven } from '../quantity/quantities';
import { faultOf, type Fault } from './fault';

/** Of a dried or fermented sausage. */
export type Stability = 'shelf stable' | 'perishable' | 'very perishable';

export type Analysed = { pH: number; aw: number };

/**
 * FSIS training material "Principles of Preservation of Shelf-Stable Dried Meat Products" (2005), p. 159: shelf stable
 * below pH 5.2 and a_w 0.95 together, or below pH 5.0, or below a_w 0.91; very perishable above pH 5.2 and a_w 0.95;
 * perishable between, its own boundaries included.
 */
export function stabilityOf({ pH, aw }: Analysed): Stability | Fault {
  const [acid, water] = [scaled(pH, 3), scaled(aw, 3)];
  if (acid === undefined || acid < 0 || acid > 14_000) return faultOf('pH-unusable', { pH: asGiven(pH, 'pH') });
  if (water === undefined || water < 0 || water > 1000) return faultOf('aw-unusable', { aw: asGiven(aw, 'aw') });
  const isStable = (acid < 5200 && water < 950) || acid < 5000 || water < 910;
  if (isStable) return 'shelf stable';
  return acid > 5200 && water > 950 ? 'very perishable' : 'perishable';
}

/**
 * By water activity alone (FSIS Compliance Guideline for Meat and Poultry Jerky, 2014, pp. 15-16, read in extracts): up
 * to 0.85 in air; up to 0.91 in vacuum, labelled "Refrigerate After Opening"; else refrigerated.
 */
export type KeepsIn = 'air' | 'vacuum, refrigerate after opening' | 'refrigeration';
export function keepsIn(aw: number): KeepsIn | Fault {
  const water = scaled(aw, 3);
  if (water === undefined || water < 0 || water > 1000) return faultOf('aw-unusable', { aw: asGiven(aw, 'aw') });
  if (water <= 850) return 'air';
  return water <= 910 ? 'vacuum, refrigerate after opening' : 'refrigeration';
}
