import { ofProduct, wordOf, type ControlPointOnLot } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { CheckField } from '../../../ui/check-field';
import { dayWords, timeWords } from '../../../ui/moment';
import { sayEntered, sayProbe } from '../say/say-entered';

type Reading = ControlPointOnLot['readings'][number];

type ReadingsToClarifyProps = {
  point: ControlPointOnLot;
  /** What was found: these come first, and the others only when they are asked for. */
  inDoubt: string[];
  chosen: string[];
  onChoose: (chosen: string[]) => void;
  error?: string;
};

/** The readings of a control point that count, each with its value and time; one tap chooses one or leaves it out. */
export function ReadingsToClarify({ point, inDoubt, chosen, onChoose, error }: ReadingsToClarifyProps) {
  const [isAll, setAll] = useState(inDoubt.length === 0);
  const counting = ofProduct(point.controlPoint, point.readings).filter(({ amendedBy }) => amendedBy === undefined);
  const shown = isAll ? counting : counting.filter(({ readingId }) => inDoubt.includes(readingId));
  const toggle = (id: string, isChosen: boolean) => onChoose(isChosen ? [...chosen, id] : chosen.filter((other) => other !== id));
  return (
    <>
      {shown.map((reading, index) => (
        <CheckField
          key={reading.readingId}
          label={sayEntered(reading.entered)}
          detail={<Told reading={reading} />}
          checked={chosen.includes(reading.readingId)}
          onChange={(isChosen) => toggle(reading.readingId, isChosen)}
          error={index === shown.length - 1 ? error : undefined}
        />
      ))}
      {shown.length < counting.length && (
        <Button look="quiet" onClick={() => setAll(true)}>
          Show the other {counting.length - shown.length}
        </Button>
      )}
    </>
  );
}

function Told({ reading }: { reading: Reading }) {
  const { zone } = useShop();
  const { at, recordedAt, name } = reading.made;
  const when = (instant: string) => `${dayWords(instant, zone)}, ${timeWords(instant, zone)}`;
  const isApart = Math.abs(Date.parse(recordedAt) - Date.parse(at)) > 60_000;
  const word = wordOf(reading);
  const told = [
    `Taken ${when(at)}`,
    isApart && `entered ${when(recordedAt)}`,
    reading.probe && sayProbe(reading.probe),
    name && `by ${name}`,
    word && `said to be: ${word}`,
  ];
  return told.filter(Boolean).join(', ');
}
