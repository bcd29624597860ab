import { listStarterPlans, showPlan, type PlanContent, type Product } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import { call } from '../../../api/client';
import { announce } from '../../../ui/announcer';
import { Loading } from '../../../ui/loading';
import { Problem } from '../../../ui/problem';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Tiles } from '../../../ui/tiles';
import { PlanCaution } from '../document/plan-caution';
import { processWords } from '../described/product-words';
import { emptyPlan } from './edit-plan';
import { draftOfContent, draftOfPlan, type PlanDraft } from './plan-draft';

type BeginPlanProps = { product: Product; onBegin: (draft: PlanDraft) => void };

/** What the next plan begins from: an earlier version, a starter plan filled with published figures, or nothing. */
export function BeginPlan({ product, onBegin }: BeginPlanProps) {
  const { data, error, refetch } = useQuery(ask(listStarterPlans, {}));
  const begin = (content: PlanContent, from: string) => onBegin(draftOfContent(content, from));
  const fits = ({ process }: { process: string }) => Number(process === product.process);
  const starters = (data?.starters ?? []).toSorted((a, b) => fits(b) - fits(a));
  return (
    <Stack gap="wide">
      {product.plans.length > 0 && <EarlierVersions product={product} onBegin={onBegin} />}
      <Section title="A plan to start from">
        {error && !data && <Problem error={error} onRetry={() => void refetch()} />}
        {!data && !error && <Loading />}
        <Tiles
          label="Plans to start from"
          tiles={starters.map(({ process, title, about, content }) => ({
            key: title,
            title,
            onTap: () => begin(content, `the plan to start from “${title}”`),
            lines: [process === product.process && `For ${processWords[process].toLowerCase()}, as this product is made.`, about],
          }))}
        />
        <PlanCaution />
      </Section>
      <Section title="An empty plan">
        <Tiles
          label="Empty"
          tiles={[
            {
              key: 'empty',
              title: 'Start empty',
              lines: ['Every step, hazard and control point in your own words.'],
              onTap: () => begin(emptyPlan(product.process), 'an empty plan'),
            },
          ]}
        />
      </Section>
    </Stack>
  );
}

function EarlierVersions({ product, onBegin }: BeginPlanProps) {
  const begin = async (planId: string) => {
    try {
      onBegin(draftOfPlan(await call(showPlan, { planId })));
    } catch {
      announce('The version could not be fetched. Try again when there is a connection.', { urgent: true });
    }
  };
  return (
    <Section title="An earlier version">
      <Tiles
        label="Earlier versions"
        tiles={product.plans.map(({ planId, version, title, inForce, adoptedAt }) => ({
          key: planId,
          title: `Plan ${version}`,
          onTap: () => void begin(planId),
          lines: [title, inForce ? 'In force' : adoptedAt ? 'Superseded' : 'Not adopted'],
        }))}
      />
    </Section>
  );
}
