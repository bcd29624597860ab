import { useState } from 'react';
import { Dialog } from './dialog';
import { Field } from './field';
import css from './find-field.module.css';
import { foundByWords } from './found-by-words';
import { SelectField, type Choice, type SelectFieldProps } from './select-field';
import { TextField } from './text-field';
import { useSay } from './voice';

/** More than these do not stand on a telephone's screen at once. */
const fewAtOnce = 8;

type FindFieldProps<V extends string> = Pick<
  SelectFieldProps<V>,
  'label' | 'hint' | 'error' | 'optional' | 'choices' | 'value' | 'onChange' | 'placeholder' | 'autoFocus'
>;

/** One of what grows with the shop: a few are chosen from a list, more are found by a part of their name. */
export function FindField<V extends string>(props: FindFieldProps<V>) {
  return props.choices.length > fewAtOnce ? <Finding {...props} /> : <SelectField {...props} />;
}

function Finding<V extends string>({ label, hint, error, optional, choices, value, onChange, placeholder, autoFocus }: FindFieldProps<V>) {
  const say = useSay('shared');
  const [isOpen, setOpen] = useState(false);
  const shown = choices.find((choice) => choice.value === value)?.name ?? placeholder ?? say('choose-one');
  const take = (chosen: V) => {
    setOpen(false);
    onChange(chosen);
  };
  return (
    <Field label={label} hint={hint} error={error} optional={optional}>
      {({ className, 'aria-invalid': _, ...control }) => (
        <>
          <button
            {...control}
            type="button"
            autoFocus={autoFocus}
            className={`${className} ${css.chosen}`}
            aria-label={say('chosen-for', { label, chosen: shown })}
            aria-haspopup="dialog"
            onClick={() => setOpen(true)}
          >
            {shown}
          </button>
          {isOpen && <FindDialog label={label} choices={choices} value={value} onTake={take} onClose={() => setOpen(false)} />}
        </>
      )}
    </Field>
  );
}

type FindDialogProps<V extends string> = {
  label: string;
  choices: Choice<V>[];
  value: V | '';
  onTake: (value: V) => void;
  onClose: () => void;
};

function FindDialog<V extends string>({ label, choices, value, onTake, onClose }: FindDialogProps<V>) {
  const say = useSay('shared');
  const [words, setWords] = useState('');
  const found = foundByWords(choices, words);
  const takeOnly = () => found[0] && found.length === 1 && onTake(found[0].value);
  return (
    <Dialog title={label} onClose={onClose}>
      <TextField
        label={say('find-by-name')}
        type="search"
        autoFocus
        autoComplete="off"
        value={words}
        onChange={setWords}
        onKeyDown={(event) => {
          if (event.key !== 'Enter') return;
          event.preventDefault(); // the form around it is not sent by finding
          takeOnly();
        }}
      />
      <p className={css.count} role="status">
        {say('found-by-name', { count: found.length })}
      </p>
      <ul className={css.found} aria-label={label}>
        {found.map((choice) => (
          <li key={choice.value}>
            <button
              type="button"
              className={css.choice}
              aria-current={choice.value === value || undefined}
              onClick={() => onTake(choice.value)}
            >
              {choice.name}
            </button>
          </li>
        ))}
      </ul>
    </Dialog>
  );
}
