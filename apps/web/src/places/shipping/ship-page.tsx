import { useShop } from '../../api/use-shop';
import { EmptyState } from '../../ui/empty-state';
import { LinkButton } from '../../ui/link-button';
import { PageHeader } from '../../ui/page-header';
import { Stack } from '../../ui/stack';
import { ShipForm } from './ship/ship-form';

/** Packages of cleared lots leave for a customer: who, what and how many, on which document. */
export function ShipPage() {
  const { mayRecord } = useShop();
  return (
    <Stack>
      <PageHeader over="Shipping" title="Ship" actions={<LinkButton to="/shipping">Back to the stock</LinkButton>} />
      {mayRecord ? (
        <ShipForm />
      ) : (
        <EmptyState title="You may look, not ship" action={<LinkButton to="/shipping/shipments">Shipments</LinkButton>}>
          Shipments are recorded by the people of the shop.
        </EmptyState>
      )}
    </Stack>
  );
}
