import { showPlan, showProduct, type Plan } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';
import { Loading } from '../../../ui/loading';
import { Problem } from '../../../ui/problem';
import { Section } from '../../../ui/section';
import { SelectField } from '../../../ui/select-field';
import type { Difference } from './difference';
import { planDifferences } from './plan-differences';
import css from './sentences.module.css';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';

export function Differences({ plan }: { plan: Plan }) {
  const say = useSay('plan-versions');
  const { data: product } = useQuery(ask(showProduct, { productId: plan.productId }));
  const others = (product?.plans ?? []).filter(({ planId }) => planId !== plan.planId);
  const [chosenId, setChosenId] = useState<string>();
  const before = others.find(({ version }) => version === plan.version - 1);
  const other = others.find(({ planId }) => planId === chosenId) ?? before ?? others[0];
  if (!other) return null;
  return (
    <Section title={say('what-is-different')}>
      <SelectField
        label={say('compared-with')}
        value={other.planId}
        onChange={setChosenId}
        choices={others.map(({ planId, version, title, inForce }) => ({
          value: planId,
          name: say(inForce ? 'named-in-force' : 'named', { version, title }),
        }))}
      />
      <Compared plan={plan} otherId={other.planId} />
    </Section>
  );
}

function Compared({ plan, otherId }: { plan: Plan; otherId: string }) {
  const say = useSay('plan-versions');
  const [sayPlans, sayProducts] = [useSay('plans'), useSay('products')];
  const limits = useLimits();
  const { data: other, error, refetch } = useQuery(ask(showPlan, { planId: otherId }));
  if (error && !other) return <Problem error={error} onRetry={() => void refetch()} />;
  if (!other) return <Loading />;
  const [earlier, later] = other.version < plan.version ? [other, plan] : [plan, other];
  const differences = planDifferences(earlier.content, later.content, { say, sayPlans, sayProducts, limits });
  if (differences.length === 0) return <p>{say('say-the-same', { earlier: earlier.version, later: later.version })}</p>;
  return (
    <>
      <p>{say('from-to', { earlier: earlier.version, later: later.version })}</p>
      <ul className={css.differences}>
        {differences.map((difference, i) => (
          <DifferenceView key={i} difference={difference} />
        ))}
      </ul>
    </>
  );
}

function DifferenceView({ difference: { where, what, before, after } }: { difference: Difference }) {
  const say = useSay('plan-versions');
  return (
    <li className={css.difference}>
      <p>
        <strong>{where}</strong> · {what}
      </p>
      {before !== undefined && (
        <dl className={css.pair}>
          <dt>{say('was')}</dt>
          <dd>{before}</dd>
          <dt>{say('is')}</dt>
          <dd>{after}</dd>
        </dl>
      )}
    </li>
  );
}
