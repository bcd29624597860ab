import { ofProduct, wordOf, type ControlPointOnLot } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { CheckField } from '../../../ui/check-field';
import { useEntered } from '../../../ui/moment';
import { useFigures, useSay } from '../../../ui/voice';
import { enteredValue, probeName } from '../say/entered';

type Reading = ControlPointOnLot['readings'][number];

type ReadingsToClarifyProps = {
  point: ControlPointOnLot;
  /** These come first; the others are shown on request. */
  inDoubt: string[];
  chosen: string[];
  onChoose: (chosen: string[]) => void;
  error?: string;
};

export function ReadingsToClarify({ point, inDoubt, chosen, onChoose, error }: ReadingsToClarifyProps) {
  const say = useSay('judging');
  const sayEntry = useSay('entries');
  const figures = useFigures();
  const [isAll, setAll] = useState(inDoubt.length === 0);
  const counting = ofProduct(point.controlPoint, point.readings).filter(({ amendedBy }) => amendedBy === undefined);
  const shown = isAll ? counting : counting.filter(({ readingId }) => inDoubt.includes(readingId));
  const toggle = (id: string, isChosen: boolean) => onChoose(isChosen ? [...chosen, id] : chosen.filter((other) => other !== id));
  return (
    <>
      {shown.map((reading, index) => (
        <CheckField
          key={reading.readingId}
          label={enteredValue(reading.entered, sayEntry, figures)}
          detail={<Told reading={reading} />}
          checked={chosen.includes(reading.readingId)}
          onChange={(isChosen) => toggle(reading.readingId, isChosen)}
          error={index === shown.length - 1 ? error : undefined}
        />
      ))}
      {shown.length < counting.length && (
        <Button look="quiet" onClick={() => setAll(true)}>
          {say('show-the-other', { count: String(counting.length - shown.length) })}
        </Button>
      )}
    </>
  );
}

function Told({ reading }: { reading: Reading }) {
  const say = useSay('judging');
  const sayEntry = useSay('entries');
  const { at, recordedAt, name } = reading.made;
  const entered = useEntered({ at, recordedAt });
  const word = wordOf(reading);
  const told = [
    say('taken-at', { when: { at } }),
    entered,
    reading.probe && probeName(reading.probe, sayEntry),
    name && say('by-whom', { who: name }),
    word && say('said-to-be', { word: sayEntry(codeOf('word', word)) }),
  ];
  return told.filter(Boolean).join(', ');
}
