import { TextField } from '../../../ui/text-field';
import { useNow } from '../../../ui/time-left';
import { wallTime } from '../../../ui/wall-time';
import { lotCodeExample } from './lot-code-example';

type LotCodeFieldProps = { zone: string; value: string; error?: string; onChange: (pattern: string) => void };

const aMinute = 60_000;

/** The pattern of lot codes, with the codes it would give today while it is being written. */
export function LotCodeField({ zone, value, error, onChange }: LotCodeFieldProps) {
  const example = lotCodeExample(value, wallTime(useNow(aMinute), zone).slice(0, 10));
  const isFaulty = 'fault' in example;
  return (
    <TextField
      label="Pattern of lot codes"
      maxLength={40}
      autoComplete="off"
      autoCapitalize="none"
      spellCheck={false}
      value={value}
      onChange={onChange}
      error={isFaulty ? example.fault : error}
      hint={
        <>
          {!isFaulty && (
            <>
              Today’s first two lots: <strong>{example.first}</strong> and <strong>{example.second}</strong>.{' '}
            </>
          )}
          {
            '{YY} year, {DDD} day of the year, {MM} month, {DD} day, {n} number of the day, {product} short code of the product; anything else stands as it is.'
          }
        </>
      }
    />
  );
}
