import { traceSupplierLot } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useSearch } from '@tanstack/react-router';
import { ask } from '../../api/ask';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { SupplierLotSheet } from './supplier-lot-sheet';

/** Every delivery of a supplier's lot number, and everything after them. */
export function SupplierLotPage() {
  const { lot, supplier }: { lot?: unknown; supplier?: unknown } = useSearch({ strict: false });
  const asked = {
    supplierLot: lot === undefined ? '' : String(lot),
    ...(typeof supplier === 'string' && { supplierId: supplier }),
  };
  const { data, error, refetch } = useQuery(ask(traceSupplierLot, asked));
  if (data) return <SupplierLotSheet trace={data} asked={asked} />;
  return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading what="the trace" />;
}
