import { isOfSurroundings, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import type { Entered } from '../../../ui/keypad';
import { lastUnit, unitOf } from './last-unit';
import { nextProbe } from './next-probe';
import { unitsFor } from './units-for';
import { usualWeights } from './usual-weights';

type Amended = ControlPointOnLot['readings'][number] | undefined;

/** An empty display asks in the unit that the probe was last read in. */
export function useProbe(lot: Lot, point: ControlPointOnLot, amended: Amended) {
  const { degrees, units: shown } = useShop();
  const { controlPoint } = point;
  const [probe, setProbe] = useState(() => amended?.probe ?? nextProbe(point));
  const isAround = isOfSurroundings(controlPoint, { probe });
  const scale = usualWeights(point, probe, lot.meatBlockGrams, shown);
  const units = unitsFor(isAround ? { ...controlPoint, plausible: undefined } : controlPoint, degrees, scale);
  const [entered, setEntered] = useState<Entered>(() => ({
    text: '',
    unit: (amended && unitOf(amended)) ?? lastUnit(point, probe) ?? units[0]?.unit ?? degrees,
  }));
  /** What was typed keeps its unit. */
  const chooseProbe = (chosen: string) => {
    setProbe(chosen);
    if (!entered.text) setEntered({ text: '', unit: lastUnit(point, chosen) ?? entered.unit });
  };
  const turnToNext = () => {
    const turn = nextProbe(point, probe);
    // of the same probe, the lot may not show the reading just saved yet
    setEntered({ text: '', unit: (turn === probe ? undefined : lastUnit(point, turn)) ?? entered.unit });
    setProbe(turn);
  };
  return { probe, isAround, units, entered, setEntered, chooseProbe, turnToNext };
}
