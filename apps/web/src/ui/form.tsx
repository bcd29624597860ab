import { useEffect, useRef, type FormEvent, type ReactNode } from 'react';

type FormProps = {
  /** For a submit button outside the form, at the foot of a dialog. */
  id?: string;
  /** The focus goes to the first wrong field. */
  errors: Record<string, string>;
  busy?: boolean;
  onSubmit: () => void;
  children: ReactNode;
};

/** Checked in our own words; takes nothing while it is busy. */
export function Form({ id, errors, busy = false, onSubmit, children }: FormProps) {
  const form = useRef<HTMLFormElement>(null);
  const said = Object.values(errors).join('\n');
  useEffect(() => {
    if (said) form.current?.querySelector<HTMLElement>('[aria-invalid=true], [data-wrong] input, [data-wrong] button')?.focus();
  }, [said]);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!busy) onSubmit();
  };
  return (
    <form id={id} ref={form} onSubmit={submit} noValidate>
      {children}
    </form>
  );
}
