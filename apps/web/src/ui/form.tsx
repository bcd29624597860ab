import { useEffect, useRef, type FormEvent, type ReactNode } from 'react';

type FormProps = {
  /** Names the form, for a submit button that stands outside it: at the foot of a dialog. */
  id?: string;
  /** What is wrong with which field; when something is, the focus goes to the first. */
  errors: Record<string, string>;
  busy?: boolean;
  onSubmit: () => void;
  children: ReactNode;
};

/** A form that is checked by us, in our own words, and takes nothing while it is busy. */
export function Form({ id, errors, busy = false, onSubmit, children }: FormProps) {
  const form = useRef<HTMLFormElement>(null);
  const said = Object.values(errors).join('\n');
  useEffect(() => {
    if (said) form.current?.querySelector<HTMLElement>('[aria-invalid=true], [data-wrong] input')?.focus();
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
