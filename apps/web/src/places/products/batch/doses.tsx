import { massOf, type EnteredMass } from '@larderbook/haccp';
import { useState } from 'react';
import { ChoiceField } from '../../../ui/choice-field';
import { Facts } from '../../../ui/facts';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Status } from '../../../ui/status';
import css from './batch.module.css';
import { onTheScale, ppmOf, sayGrams, sayReading, type Dose } from './on-the-scale';
import type { Batch } from './weighing-sheet';

const steps: { value: string; name: string; step: EnteredMass }[] = [
  { value: '0.1 g', name: '0.1 g', step: { value: 0.1, unit: 'g' } },
  { value: '1 g', name: '1 g', step: { value: 1, unit: 'g' } },
  { value: '5 g', name: '5 g', step: { value: 5, unit: 'g' } },
  { value: '0.1 oz', name: '0.1 oz', step: { value: 0.1, unit: 'oz' } },
  { value: '0.5 oz', name: '½ oz', step: { value: 0.5, unit: 'oz' } },
];

/** The curing ingredients: how much at least and at most, and what the steps of the scale do to it. */
export function Doses({ batch }: { batch: Batch }) {
  const [chosen, setChosen] = useState('0.1 g');
  const step = steps.find(({ value }) => value === chosen)?.step ?? { value: 0.1, unit: 'g' };
  if (batch.doses.length === 0) return null;
  return (
    <Section title="Curing ingredients on the scale">
      <Stack>
        <ChoiceField label="The scale shows steps of" choices={steps} value={chosen} onChange={setChosen} />
        {batch.doses.map((dose) => (
          <DoseView key={dose.itemName} dose={dose} grams={gramsOf(batch, dose.itemName)} step={step} />
        ))}
      </Stack>
    </Section>
  );
}

type DoseViewProps = { dose: Batch['doses'][number]; grams: number; step: EnteredMass };

function DoseView({ dose, grams, step }: DoseViewProps) {
  const { itemName, substance, ppm, weighGrams, onScale, minGrams, maxGrams, printed } = dose;
  return (
    <div className={css.dose}>
      <h3>{itemName}</h3>
      <Facts
        facts={[
          { name: 'To weigh', value: weighGrams === undefined ? 'not on this scale' : `${weighGrams} g` },
          { name: 'The formula gives', value: `${ppm} ppm ${substance}` },
          { name: 'Least', value: minGrams === undefined ? 'none is set' : sayUp(minGrams) },
          { name: 'Most', value: maxGrams === undefined ? 'none is set' : sayDown(maxGrams) },
          { name: 'Limit', value: printed },
        ]}
      />
      {onScale && <p role="note">{onScale}</p>}
      <ScaleWords dose={{ grams, ppm, minGrams, maxGrams }} step={step} />
    </div>
  );
}

function ScaleWords({ dose, step }: { dose: Dose; step: EnteredMass }) {
  const { reading, really, sure } = onTheScale(dose, step);
  const isSure = sure !== undefined && reading >= sure.from && reading <= sure.to;
  return (
    <>
      <Status
        state={isSure ? 'met' : sure ? 'undetermined' : 'missed'}
        word={isSure ? 'Fine enough' : sure ? 'Not at this target' : 'Too coarse for so little'}
        margin={`${sure ? `readings ${saySure(sure, dose, step)} are` : 'no reading is'} surely within the limit`}
      />
      <p>
        When a scale in steps of {sayReading(massOf(step), step)} reads {sayReading(reading, step)}, between {sayGrams(really.least)} and{' '}
        {sayGrams(really.most)} lie on it: up to {ppmOf(really.most, dose)} ppm. {!sure && 'Take a finer scale, or make a larger batch.'}
      </p>
    </>
  );
}

const saySure = ({ from, to }: { from: bigint; to: bigint }, { minGrams }: Dose, step: EnteredMass): string =>
  minGrams === undefined ? `up to ${sayReading(to, step)}` : `from ${sayReading(from, step)} to ${sayReading(to, step)}`;

const gramsOf = ({ lines }: Batch, itemName: string): number => lines.find((line) => line.itemName === itemName)?.grams ?? 0;
/** Rounded inward to the tenth of a gram, so that neither is passed by reading it. */
const sayUp = (grams: number): string => `${(Math.ceil(Number((grams * 10).toFixed(6))) / 10).toFixed(1)} g`;
const sayDown = (grams: number): string => `${(Math.floor(Number((grams * 10).toFixed(6))) / 10).toFixed(1)} g`;
