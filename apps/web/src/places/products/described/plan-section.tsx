import type { Product } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { EmptyState } from '../../../ui/empty-state';
import { LinkButton } from '../../../ui/link-button';
import { Moment } from '../../../ui/moment';
import { Section } from '../../../ui/section';
import { Table } from '../../../ui/table';
import { PlanStanding } from '../document/plan-standing';
import { useShop } from '../../../api/use-shop';

/** The versions of a product's plan, the latest first, and how each stands. */
export function PlanSection({ product: { productId, plans } }: { product: Product }) {
  const { isOwner, zone } = useShop();
  const isFirst = plans.length === 0;
  const write = isOwner && (
    <LinkButton look={isFirst ? 'primary' : 'plain'} to="/products/$productId/plan" params={{ productId }}>
      {isFirst ? 'Start a plan' : 'Write the next version'}
    </LinkButton>
  );
  if (isFirst) {
    return (
      <Section title="Plan">
        <EmptyState title="No plan yet" action={write}>
          <p>
            The HACCP plan holds the flow diagram, the hazards of each step and the control points with their limits. It binds once it is
            signed.
          </p>
        </EmptyState>
      </Section>
    );
  }
  return (
    <Section title="Plan" aside={write}>
      <Table
        caption="Versions of the plan"
        captionUnseen
        rows={plans}
        rowKey={({ planId }) => planId}
        columns={[
          {
            head: 'Version',
            oneLine: true,
            cell: ({ planId, version }) => (
              <Link to="/plans/$planId" params={{ planId }}>
                Plan {version}
              </Link>
            ),
          },
          { head: 'Title', cell: ({ title }) => title },
          { head: 'Stands', oneLine: true, cell: (plan) => <PlanStanding plan={plan} /> },
          {
            head: 'Signed',
            cell: ({ adoptedAt, adoptedBy }) =>
              adoptedAt ? (
                <>
                  {adoptedBy}, <Moment at={adoptedAt} zone={zone} show="day" />
                </>
              ) : (
                'not signed'
              ),
          },
        ]}
      />
    </Section>
  );
}
