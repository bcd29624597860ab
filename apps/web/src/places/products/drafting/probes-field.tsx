import { useState } from 'react';
import { TextField } from '../../../ui/text-field';

type ProbesFieldProps = { value: string[]; error: string | undefined; onChange: (probes: string[]) => void };

/** Names of the probes, typed one after the other with commas between. */
export function ProbesField({ value, error, onChange }: ProbesFieldProps) {
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
    <TextField
      label="Probes"
      optional
      autoComplete="off"
      hint="Their names with commas between, such as “core 1, core 2”. The worst of them decides."
      value={text}
      error={error}
      onChange={type}
    />
  );
}
