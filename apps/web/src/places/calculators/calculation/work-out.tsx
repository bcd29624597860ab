import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { check, fieldErrors, type FieldErrors } from '../../../api/check';
import { call } from '../../../api/client';
import { useShop } from '../../../api/use-shop';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Form } from '../../../ui/form';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import css from '../calculators.module.css';
import { bodyOf, type Typed } from '../forms/body-of';
import { firstTyped } from '../forms/first-typed';
import type { CalculationForm } from '../forms/form';
import { seriesErrors } from '../forms/series-errors';
import { FormField } from './form-field';
import { WorkingView } from './working-view';

/** The questions of a calculation and, once they are answered, its working under them. */
export function WorkOut({ form: { route, fields } }: { form: CalculationForm }) {
  const { degrees, units } = useShop();
  const [typed, setTyped] = useState<Typed>(() => firstTyped(fields, { degrees, isMetric: units !== 'US' }));
  const [errors, setErrors] = useState<FieldErrors>({});
  const worked = useMutation({ mutationFn: (body: Record<string, unknown>) => call(route, body) });

  const type = (key: string, text: string) => {
    setTyped({ ...typed, [key]: text });
    worked.reset(); // a working never stands beside other figures than its own
  };
  const submit = () => {
    const body = bodyOf(fields, typed);
    const wrong = { ...check(route.body, body).errors, ...seriesErrors(fields, typed) };
    setErrors(wrong);
    if (Object.keys(wrong).length > 0) return;
    worked.mutate(body, {
      onSuccess: () => announce('The working is below.', { unseen: true }),
      onError: (error) => setErrors(fieldErrors(error)),
    });
  };
  return (
    <Stack gap="wide">
      <div className={css.form}>
        <Form errors={errors} busy={worked.isPending} onSubmit={submit}>
          <Stack>
            {fields.map((field) => (
              <FormField key={field.key} field={field} typed={typed} errors={errors} onType={type} />
            ))}
            <Button type="submit" look="primary" busy={worked.isPending && 'Working it out…'}>
              Work it out
            </Button>
          </Stack>
        </Form>
      </div>
      {worked.error && <Problem error={worked.error} />}
      {worked.data && <WorkingView working={worked.data} />}
    </Stack>
  );
}
