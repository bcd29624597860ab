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
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../ui/voice';
import { emptyPlan } from './edit-plan';
import { draftOfContent, draftOfPlan, type PlanDraft } from './plan-draft';

type BeginPlanProps = { product: Product; onBegin: (draft: PlanDraft) => void };

export function BeginPlan({ product, onBegin }: BeginPlanProps) {
  const say = useSay('plan-drafts');
  const sayProduct = useSay('products');
  const { data, error, refetch } = useQuery(ask(listStarterPlans, {}));
  const begin = (content: PlanContent, starter?: string) => onBegin(draftOfContent(content, starter));
  const fits = ({ process }: { process: string }) => Number(process === product.process);
  const starters = (data?.starters ?? []).toSorted((a, b) => fits(b) - fits(a));
  return (
    <Stack gap="wide">
      {product.plans.length > 0 && <EarlierVersions product={product} onBegin={onBegin} />}
      <Section title={say('to-start-from')}>
        {error && !data && <Problem error={error} onRetry={() => void refetch()} />}
        {!data && !error && <Loading />}
        <Tiles
          label={say('plans-to-start-from')}
          tiles={starters.map(({ process, title, about, content }) => ({
            key: title,
            title,
            onTap: () => begin(content, title),
            lines: [
              process === product.process && say('for-this-process', { process: sayProduct(codeOf('process', process)).toLowerCase() }),
              about,
            ],
          }))}
        />
        <PlanCaution />
      </Section>
      <Section title={say('empty-plan')}>
        <Tiles
          label={say('empty')}
          tiles={[
            {
              key: 'empty',
              title: say('start-empty'),
              lines: [say('own-words')],
              onTap: () => begin(emptyPlan(product.process)),
            },
          ]}
        />
      </Section>
    </Stack>
  );
}

function EarlierVersions({ product, onBegin }: BeginPlanProps) {
  const say = useSay('plan-drafts');
  const sayPlans = useSay('plans');
  const begin = async (planId: string) => {
    try {
      onBegin(draftOfPlan(await call(showPlan, { planId })));
    } catch {
      announce(say('not-fetched'), { urgent: true });
    }
  };
  return (
    <Section title={say('earlier-version')}>
      <Tiles
        label={say('earlier-versions')}
        tiles={product.plans.map(({ planId, version, title, inForce, adoptedAt }) => ({
          key: planId,
          title: say('numbered', { version }),
          onTap: () => void begin(planId),
          lines: [title, sayPlans(inForce ? 'in-force' : adoptedAt ? 'superseded' : 'not-adopted')],
        }))}
      />
    </Section>
  );
}
