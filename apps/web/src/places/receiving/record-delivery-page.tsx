import { listItems, listReceipts, listSuppliers } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { EmptyState } from '../../ui/empty-state';
import { Loading } from '../../ui/loading';
import { PageHeader } from '../../ui/page-header';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';
import { RecordDelivery } from './record/record-delivery';

export function RecordDeliveryPage() {
  const say = useSay('receiving');
  const { mayRecord } = useShop();
  const items = useQuery(ask(listItems, {}));
  const suppliers = useQuery(ask(listSuppliers, {}));
  const receipts = useQuery(ask(listReceipts, { left: 'any' }));
  const failed = [items, suppliers].find(({ error, data }) => error && !data);
  if (!mayRecord) {
    return (
      <Stack>
        <PageHeader title={say('record-delivery')} over={say('receiving')} />
        <EmptyState title={say('inspector-title')}>{say('people-record')}</EmptyState>
      </Stack>
    );
  }
  if (items.data && suppliers.data)
    return <RecordDelivery items={items.data.items} suppliers={suppliers.data.suppliers} receipts={receipts.data?.receipts ?? []} />;
  return failed ? <Problem error={failed.error} onRetry={() => void failed.refetch()} /> : <Loading />;
}
