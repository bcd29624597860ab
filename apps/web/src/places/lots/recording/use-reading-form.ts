import { isOfSurroundings, recordReading, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import type { PointForecast } from '@larderbook/haccp';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { useRecording } from '../../../outbox/use-recording';
import type { Entered, KeptNumber } from '../../../ui/keypad';
import { numberOf } from '../../../ui/keypad-text';
import { useFigures, useSay } from '../../../ui/voice';
import { askBeside } from '../preview/ask-beside';
import { previewReadingOf } from '../preview/preview-curve';
import { previewForecast } from '../preview/preview-forecast';
import { previewValue } from '../preview/preview-value';
import { amendsOf, type Amending } from './amending';
import { lastUnit, unitOf } from './last-unit';
import { nextProbe } from './next-probe';
import { instrumentFor, readingUnit } from './reading-unit';
import { unitsFor } from './units-for';
import { useInstrument } from './use-instrument';
import { useTakenAt } from './use-taken-at';
import { usualWeights } from './usual-weights';
import type { VerdictOn } from '../preview/verdict-on';

/** Everything one reading needs: number, unit, probe, instrument, moment, how it would be judged, and keeping it. */
export function useReadingForm(lot: Lot, point: ControlPointOnLot, amending: Amending | undefined) {
  const say = useSay('lot-forms');
  const figures = useFigures();
  const { degrees, units: shown } = useShop();
  const { controlPoint } = point;
  const recording = useRecording(recordReading);
  const takenAt = useTakenAt(amending);
  const amended = point.readings.find(({ readingId }) => readingId === amending?.id);
  const [probe, setProbe] = useState(() => amended?.probe ?? nextProbe(point));
  const isAround = isOfSurroundings(controlPoint, { probe });
  const scale = usualWeights(point, probe, lot.meatBlockGrams, shown);
  const units = unitsFor(isAround ? { ...controlPoint, plausible: undefined } : controlPoint, degrees, scale);
  const [forecast, setForecast] = useState<PointForecast>();
  const [entered, setEntered] = useState<Entered>(() => ({
    text: '',
    unit: (amended && unitOf(amended)) ?? lastUnit(point, probe) ?? units[0]?.unit ?? degrees,
  }));
  const instrument = useInstrument(instrumentFor(entered.unit), entered.unit);

  const value = numberOf(entered.text);
  const what =
    value === undefined
      ? controlPoint.name
      : `${isAround ? probe : controlPoint.name} ${figures.quantity({ value, unit: readingUnit(entered.unit) })}`;
  const verdicts =
    value === undefined ? [] : preview({ lot, point, value, unit: entered.unit, probe, at: takenAt.at(), amends: amending?.id });

  const save = ({ value: kept, unit, sure }: KeptNumber) => {
    const at = Date.parse(takenAt.at());
    setForecast(previewForecast(point, lot, { value: kept, unit, probe, at }, amending?.id));
    return recording.save(
      {
        readingId: recording.id,
        lotId: lot.lotId,
        controlPointId: controlPoint.controlPointId,
        entered: { value: kept, unit: readingUnit(unit) },
        probe: probe || undefined,
        instrumentId: instrument.chosen?.instrumentId,
        takenAt: takenAt.at(),
        sure: sure || recording.refused?.code === 'implausible-value' || undefined,
        ...amendsOf(amending),
      },
      say('what-in-lot', { what, lot: lot.code }),
    );
  };
  const ask = (typed: number, unit: string) =>
    askBeside(point, { value: typed, unit, probe, at: Date.parse(takenAt.at()) }, { amends: amending?.id, usualPiece: lot.usualPiece });
  const another = () => {
    const turn = nextProbe(point, probe);
    recording.again();
    takenAt.setValue('');
    // of the same probe the lot may not show the reading yet that was saved just now
    setEntered({ text: '', unit: (turn === probe ? undefined : lastUnit(point, turn)) ?? entered.unit });
    setProbe(turn);
  };
  /** What was typed stays as it is, in its unit; an empty keypad asks in the unit of the probe. */
  const chooseProbe = (chosen: string) => {
    setProbe(chosen);
    if (!entered.text) setEntered({ text: '', unit: lastUnit(point, chosen) ?? entered.unit });
  };
  return {
    recording,
    takenAt,
    units,
    instrument,
    probe,
    chooseProbe,
    isAround,
    entered,
    setEntered,
    what,
    verdicts,
    ask,
    /** When it will be there, with the reading that was saved. */
    forecast,
    save,
    another,
  };
}

type Previewed = {
  lot: Lot;
  point: ControlPointOnLot;
  value: number;
  unit: string;
  probe: string;
  at: string;
  amends?: string;
};

function preview({ lot, point, value, unit, probe, at, amends }: Previewed): VerdictOn[] {
  if (point.controlPoint.takenAs !== 'curve') return previewValue(point.controlPoint, value, unit);
  return previewReadingOf(point, lot, { value, unit, probe, at: Date.parse(at) }, amends);
}
