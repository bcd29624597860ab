import { useState } from 'react';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';

type ProbesFieldProps = { value: string[]; error: string | undefined; onChange: (probes: string[]) => void };

export function ProbesField({ value, error, onChange }: ProbesFieldProps) {
  const say = useSay('plan-points');
  const [text, setText] = useState(value.join(', '));
  const type = (next: string) => {
    setText(next);
    onChange(
      next
        .split(',')
        .map((name) => name.trim())
        .filter(Boolean),
    );
  };
  return (
    <TextField label={say('probes')} optional autoComplete="off" hint={say('probes-hint')} value={text} error={error} onChange={type} />
  );
}
