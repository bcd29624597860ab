import type { ProductLimits } from '@larderbook/contracts';
import { useState } from 'react';
import { Filter } from '../../../ui/filter';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import css from './applying.module.css';
import { byPurpose } from './by-purpose';
import { LimitLine } from './limit-line';
import { shownWhen, showing, type Showing } from './showing';
import { useSay } from '../../../ui/voice';
import { codeOf } from '@larderbook/messages';

export function LimitsList({ limits: { limits, plan } }: { limits: ProductLimits }) {
  const say = useSay('product-limits');
  const [chosen, choose] = useState<Showing>('all');
  const found = limits.filter(shownWhen[chosen]);
  const sayPurpose = useSay('limit-purposes');
  const choices = showing.map((value) => ({
    value,
    name: say('counted-choice', { name: say(codeOf('showing', value)), count: limits.filter(shownWhen[value]).length }),
  }));
  return (
    <Stack gap="wide">
      {plan && <Filter label={say('show-limits')} choices={choices} chosen={chosen} onChoose={choose} />}
      {found.length === 0 && <p>{say('none-of-them')}</p>}
      {byPurpose(found).map(([purpose, own]) => (
        <Section key={purpose} title={sayPurpose(codeOf('purpose', purpose))} aside={`${own.length}`}>
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
