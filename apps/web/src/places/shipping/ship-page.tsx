import { useShop } from '../../api/use-shop';
import { EmptyState } from '../../ui/empty-state';
import { LinkButton } from '../../ui/link-button';
import { PageHeader } from '../../ui/page-header';
import { Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';
import { ShipForm } from './ship/ship-form';

export function ShipPage() {
  const say = useSay('shipping');
  const { mayRecord } = useShop();
  return (
    <Stack>
      <PageHeader over={say('shipping')} title={say('ship')} actions={<LinkButton to="/shipping">{say('back-to-stock')}</LinkButton>} />
      {mayRecord ? (
        <ShipForm />
      ) : (
        <EmptyState title={say('look-only')} action={<LinkButton to="/shipping/shipments">{say('shipments')}</LinkButton>}>
          {say('people-record')}
        </EmptyState>
      )}
    </Stack>
  );
}
