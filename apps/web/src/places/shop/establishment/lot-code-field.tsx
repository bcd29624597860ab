import { TextField } from '../../../ui/text-field';
import { useNow } from '../../../ui/time-left';
import { wallTime } from '../../../ui/wall-time';
import { useSay, useSpoken } from '../../../ui/voice';
import { codedText } from '@larderbook/messages';
import { lotCodeExample } from './lot-code-example';

type LotCodeFieldProps = { zone: string; value: string; error?: string; onChange: (pattern: string) => void };

const aMinute = 60_000;

export function LotCodeField({ zone, value, error, onChange }: LotCodeFieldProps) {
  const say = useSay('shop');
  const told = useSpoken('shop');
  const example = lotCodeExample(value, wallTime(useNow(aMinute), zone).slice(0, 10));
  const isFaulty = 'fault' in example;
  return (
    <TextField
      label={say('lot-codes')}
      maxLength={40}
      autoComplete="off"
      autoCapitalize="none"
      spellCheck={false}
      value={value}
      onChange={onChange}
      error={isFaulty ? codedText(told, example.fault) : error}
      hint={
        <>
          {!isFaulty && <strong>{say('first-two', example)} </strong>}
          {say('pattern-parts', parts)}
        </>
      }
    />
  );
}

const parts = { year: '{YY}', dayOfYear: '{DDD}', month: '{MM}', day: '{DD}', number: '{n}', product: '{product}' };
