import type { ProductLimits } from '@larderbook/contracts';
import { useState } from 'react';
import { Filter } from '../../../ui/filter';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import css from './applying.module.css';
import { byPurpose } from './by-purpose';
import { LimitLine } from './limit-line';
import { shownWhen, showing, type Showing } from './showing';

/** Every limit under what it is about; those that the plan judges, or does not, by themselves where there is a plan. */
export function LimitsList({ limits: { limits, plan } }: { limits: ProductLimits }) {
  const [chosen, choose] = useState<Showing>('all');
  const found = limits.filter(shownWhen[chosen]);
  const choices = showing.map(({ value, name }) => ({ value, name: `${name} ${limits.filter(shownWhen[value]).length}` }));
  return (
    <Stack gap="wide">
      {plan && <Filter label="Show limits that are" choices={choices} chosen={chosen} onChoose={choose} />}
      {found.length === 0 && <p>None of the limits that apply.</p>}
      {byPurpose(found).map(([heading, own]) => (
        <Section key={heading} title={heading} aside={`${own.length}`}>
          <ul className={css.limits}>
            {own.map((limit) => (
              <LimitLine key={limit.rowId} limit={limit} plan={plan} />
            ))}
          </ul>
        </Section>
      ))}
    </Stack>
  );
}
