import type { Product } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { EmptyState } from '../../../ui/empty-state';
import { LinkButton } from '../../../ui/link-button';
import { Section } from '../../../ui/section';
import { Table } from '../../../ui/table';
import { PlanStanding } from '../document/plan-standing';
import { useShop } from '../../../api/use-shop';
import { useSay } from '../../../ui/voice';

export function PlanSection({ product: { productId, plans } }: { product: Product }) {
  const say = useSay('products');
  const { isOwner } = useShop();
  const isFirst = plans.length === 0;
  const write = isOwner && (
    <LinkButton look={isFirst ? 'primary' : 'plain'} to="/products/$productId/plan" params={{ productId }}>
      {isFirst ? say('start-a-plan') : say('next-version')}
    </LinkButton>
  );
  if (isFirst) {
    return (
      <Section title={say('plan')}>
        <EmptyState title={say('no-plan')} action={write}>
          <p>{say('what-a-plan-holds')}</p>
        </EmptyState>
      </Section>
    );
  }
  return (
    <Section title={say('plan')} aside={write}>
      <Table
        caption={say('plan-versions')}
        captionUnseen
        rows={plans}
        rowKey={({ planId }) => planId}
        columns={[
          {
            head: say('version'),
            oneLine: true,
            cell: ({ planId, version }) => (
              <Link to="/plans/$planId" params={{ planId }}>
                {say('plan-version', { version })}
              </Link>
            ),
          },
          { head: say('title'), cell: ({ title }) => title },
          { head: say('stands'), oneLine: true, cell: (plan) => <PlanStanding plan={plan} /> },
          {
            head: say('signed'),
            cell: ({ adoptedAt, adoptedBy }) =>
              adoptedAt ? say('signed-by', { who: adoptedBy ?? '', day: { at: adoptedAt, show: 'day' } }) : say('not-signed'),
          },
        ]}
      />
    </Section>
  );
}
