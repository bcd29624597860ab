import { recordReading, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import type { PointForecast } from '@larderbook/haccp';
import { codedText } from '@larderbook/messages';
import { useState } from 'react';
import { useRecording } from '../../../outbox/use-recording';
import { useSure } from '../../../outbox/use-sure';
import type { KeptNumber } from '../../../ui/keypad';
import { numberOf } from '../../../ui/keypad-text';
import { useFigures, useSay, useSpoken } from '../../../ui/voice';
import { askBeside } from '../preview/ask-beside';
import { previewReadingOf } from '../preview/preview-curve';
import { previewForecast } from '../preview/preview-forecast';
import { previewValue } from '../preview/preview-value';
import { amendsOf, type Amending } from './amending';
import { instrumentFor, readingUnit } from './reading-unit';
import { useInstrument } from './use-instrument';
import { useProbe } from './use-probe';
import { useTakenAt } from './use-taken-at';
import type { VerdictOn } from '../preview/verdict-on';

export function useReadingForm(lot: Lot, point: ControlPointOnLot, amending: Amending | undefined) {
  const say = useSay('lot-forms');
  const told = useSpoken('recording');
  const figures = useFigures();
  const { controlPoint } = point;
  const recording = useRecording(recordReading);
  const { isSure, setAsked } = useSure(recording.refused);
  const takenAt = useTakenAt(amending);
  const amended = point.readings.find(({ readingId }) => readingId === amending?.id);
  const { turnToNext, ...probed } = useProbe(lot, point, amended);
  const { probe, isAround, entered } = probed;
  const [forecast, setForecast] = useState<PointForecast>();
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
    const number = { value: kept, unit: readingUnit(unit) };
    setAsked(number);
    setForecast(previewForecast(point, lot, { value: kept, unit, probe, at }, amending?.id));
    return recording.save(
      {
        readingId: recording.id,
        lotId: lot.lotId,
        controlPointId: controlPoint.controlPointId,
        entered: number,
        probe: probe || undefined,
        instrumentId: instrument.chosen?.instrumentId,
        takenAt: takenAt.toRecord(),
        sure: sure || isSure(number) || undefined,
        ...amendsOf(amending),
      },
      say('what-in-lot', { what, lot: lot.code }),
    );
  };
  const ask = (typed: number, unit: string) => {
    const next = { value: typed, unit, probe, at: Date.parse(takenAt.at()) };
    const question = askBeside(point, next, { amends: amending?.id, usualPiece: lot.usualPiece });
    return question && { ...question, because: codedText(told, question.because) };
  };
  const another = () => {
    recording.again();
    takenAt.again();
    turnToNext();
  };
  return {
    ...probed,
    recording,
    takenAt,
    instrument,
    what,
    verdicts,
    ask,
    /** The saved reading is counted in. */
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
