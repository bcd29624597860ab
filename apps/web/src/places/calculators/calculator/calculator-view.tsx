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
import type { CalculatorForm } from '../forms/form';
import { seriesErrors } from '../forms/series-errors';
import { FormField } from './form-field';
import { CalculationView } from './calculation-view';
import { useSay } from '../../../ui/voice';

export function CalculatorView({ form: { name, route, fields } }: { form: CalculatorForm }) {
  const say = useSay('calculators');
  const sayList = useSay('calculators-list');
  const { degrees, units } = useShop();
  const [typed, setTyped] = useState<Typed>(() => firstTyped(fields, { degrees, isMetric: units !== 'US' }));
  const [errors, setErrors] = useState<FieldErrors>({});
  const calculated = useMutation({ mutationFn: (body: Record<string, unknown>) => call(route, body) });

  const type = (key: string, text: string) => {
    setTyped({ ...typed, [key]: text });
    calculated.reset(); // a calculation never stands beside figures other than its own
  };
  const submit = () => {
    const body = bodyOf(fields, typed);
    const wrong = { ...check(route.body, body).errors, ...seriesErrors(fields, typed, sayList) };
    setErrors(wrong);
    if (Object.keys(wrong).length > 0) return;
    calculated.mutate(body, {
      onSuccess: () => announce(say('calculation-below'), { unseen: true }),
      onError: (error) => setErrors(fieldErrors(error)),
    });
  };
  return (
    <Stack gap="wide">
      <div className={css.form}>
        <Form errors={errors} busy={calculated.isPending} onSubmit={submit}>
          <Stack>
            {fields.map((field) => (
              <FormField key={field.key} field={field} typed={typed} errors={errors} onType={type} />
            ))}
            <Button type="submit" look="primary" busy={calculated.isPending && say('calculating')}>
              {say('calculate')}
            </Button>
          </Stack>
        </Form>
      </div>
      {calculated.error && <Problem error={calculated.error} />}
      {calculated.data && <CalculationView title={sayList(name)} calculation={calculated.data} />}
    </Stack>
  );
}
