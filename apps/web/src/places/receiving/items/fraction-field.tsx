import { Button } from '../../../ui/button';
import { NumberField } from '../../../ui/number-field';
import { Row, Stack } from '../../../ui/stack';
import type { Substance } from './item-draft';

type FractionFieldProps = { substance: Substance; value: string; error?: string; onChange: (fraction: string) => void };

/** The two strengths of curing salt that are sold. */
const curingSalts = ['6.25', '5.88'];

/** Percent of the restricted substance, copied from the bag; both usual strengths of curing salt are one tap away. */
export function FractionField({ substance, value, error, onChange }: FractionFieldProps) {
  return (
    <Stack gap="near">
      <NumberField
        label={`Percent of ${substance}`}
        unit="%"
        decimals={4}
        value={value}
        error={error}
        onChange={onChange}
        hint={
          substance === 'sodium nitrite'
            ? 'Copy it from the bag: curing salt is sold at 6.25 % and at 5.88 %, and a wrong figure makes every dose wrong.'
            : 'Copy it from the bag.'
        }
      />
      {substance === 'sodium nitrite' && (
        <Row>
          {curingSalts.map((salt) => (
            <Button key={salt} aria-pressed={Number(value) === Number(salt)} onClick={() => onChange(salt)}>
              {salt} %
            </Button>
          ))}
        </Row>
      )}
    </Stack>
  );
}
