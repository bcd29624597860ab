import { massOf, type EnteredMass, type Quantity } from '@larderbook/haccp';
import { useState } from 'react';
import { ChoiceField } from '../../../ui/choice-field';
import { Facts } from '../../../ui/facts';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Status } from '../../../ui/status';
import css from './batch.module.css';
import { gramsFigure, onTheScale, ppmOf, readingFigure, type Dose } from './on-the-scale';
import type { Batch } from './weighing-sheet';
import { useFigures, useSay, useSpoken } from '../../../ui/voice';
import { codedText, codeOf } from '@larderbook/messages';
import { allowedFigure } from './amounts';

const steps: EnteredMass[] = [
  { value: 0.1, unit: 'g' },
  { value: 1, unit: 'g' },
  { value: 5, unit: 'g' },
  { value: 0.1, unit: 'oz' },
  { value: 0.5, unit: 'oz' },
];

const keyOf = ({ value, unit }: EnteredMass) => `${value} ${unit}`;

export function Doses({ batch }: { batch: Batch }) {
  const say = useSay('batches');
  const { quantity } = useFigures();
  const [chosen, setChosen] = useState('0.1 g');
  const step = steps.find((each) => keyOf(each) === chosen) ?? { value: 0.1, unit: 'g' };
  const nameOf = (each: EnteredMass) => (each.value === 0.5 ? say('half-ounce') : quantity({ value: String(each.value), unit: each.unit }));
  if (batch.doses.length === 0) return null;
  return (
    <Section title={say('on-the-scale')}>
      <Stack>
        <ChoiceField
          label={say('scale-steps')}
          choices={steps.map((each) => ({ value: keyOf(each), name: nameOf(each) }))}
          value={chosen}
          onChange={setChosen}
        />
        {batch.doses.map((dose) => (
          <DoseView key={dose.itemName} dose={dose} grams={gramsOf(batch, dose.itemName)} step={step} />
        ))}
      </Stack>
    </Section>
  );
}

type DoseViewProps = { dose: Batch['doses'][number]; grams: number; step: EnteredMass };

function DoseView({ dose, grams, step }: DoseViewProps) {
  const say = useSay('batches');
  const { itemName, substance, ppm, weighGrams, onScale, minGrams, maxGrams, printed } = dose;
  const { quantity } = useFigures();
  const saySubstance = useSay('limits');
  const told = useSpoken('batches');
  const inGrams = (figure: number): Quantity => ({ value: String(figure), unit: 'g' });
  return (
    <div className={css.dose}>
      <h3>{itemName}</h3>
      <Facts
        facts={[
          { name: say('to-weigh'), value: weighGrams === undefined ? say('not-on-this-scale') : quantity(inGrams(weighGrams)) },
          {
            name: say('formula-gives'),
            value: say('ppm-of', { ppm: ppmFigure(ppm), substance: saySubstance(codeOf('substance', substance)) }),
          },
          { name: say('least'), value: minGrams === undefined ? say('none-set') : quantity(allowedFigure(minGrams, 'up')) },
          { name: say('most'), value: maxGrams === undefined ? say('none-set') : quantity(allowedFigure(maxGrams, 'down')) },
          { name: say('limit'), value: printed },
        ]}
      />
      {onScale && <p role="note">{codedText(told, onScale)}</p>}
      <ScaleWords dose={{ grams, ppm, minGrams, maxGrams }} step={step} />
    </div>
  );
}

function ScaleWords({ dose, step }: { dose: Dose; step: EnteredMass }) {
  const say = useSay('batches');
  const { reading, really, sure } = onTheScale(dose, step);
  const isSure = sure !== undefined && reading >= sure.from && reading <= sure.to;
  const sureWords = () => {
    if (!sure) return say('never-sure');
    const to = readingFigure(sure.to, step);
    return dose.minGrams === undefined ? say('sure-up-to', { to }) : say('sure-between', { from: readingFigure(sure.from, step), to });
  };
  return (
    <>
      {' '}
      <Status
        state={isSure ? 'met' : sure ? 'undetermined' : 'missed'}
        word={say(isSure ? 'fine-enough' : sure ? 'not-at-this-target' : 'too-coarse')}
        margin={sureWords()}
      />
      <p>
        {say('really-there', {
          step: readingFigure(massOf(step), step),
          reading: readingFigure(reading, step),
          least: gramsFigure(really.least),
          most: gramsFigure(really.most),
          ppm: ppmFigure(ppmOf(really.most, dose)),
        })}{' '}
        {!sure && say('finer-scale')}
      </p>
    </>
  );
}

const ppmFigure = (ppm: number): Quantity => ({ value: String(ppm), unit: 'ppm' });

const gramsOf = ({ lines }: Batch, itemName: string): number => lines.find((line) => line.itemName === itemName)?.grams ?? 0;
