import { codeOf } from '@larderbook/messages';
import { Button } from '../../../ui/button';
import { NumberField } from '../../../ui/number-field';
import { Row, Stack } from '../../../ui/stack';
import { useFigures, useSay } from '../../../ui/voice';
import type { Substance } from './item-draft';

type FractionFieldProps = { substance: Substance; value: string; error?: string; onChange: (fraction: string) => void };

/** The two strengths of curing salt that are sold. */
const curingSalts = ['6.25', '5.88'];

/** The percentage is copied from the bag. */
export function FractionField({ substance, value, error, onChange }: FractionFieldProps) {
  const say = useSay('items');
  const sayLimits = useSay('limits');
  const { number } = useFigures();
  return (
    <Stack gap="near">
      <NumberField
        label={say('percent-of', { substance: sayLimits(codeOf('substance', substance)) })}
        unit="%"
        decimals={4}
        value={value}
        error={error}
        onChange={onChange}
        hint={say(substance === 'sodium nitrite' ? 'copy-curing-salt' : 'copy-from-bag')}
      />
      {substance === 'sodium nitrite' && (
        <Row>
          {curingSalts.map((salt) => (
            <Button key={salt} aria-pressed={Number(value) === Number(salt)} onClick={() => onChange(salt)}>
              {number(salt)} %
            </Button>
          ))}
        </Row>
      )}
    </Stack>
  );
}
