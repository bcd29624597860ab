import { traceSupplierLot, type InputOf } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { Navigate, useSearch } from '@tanstack/react-router';
import { ask } from '../../api/ask';
import { Loading } from '../../ui/loading';
import { PageProblem } from '../../ui/page-problem';
import { SupplierLotSheet } from './supplier-lot-sheet';

export function SupplierLotPage() {
  const { lot: supplierLot, supplier } = useSearch({ from: '/trace/supplier-lot' });
  if (!supplierLot) return <Navigate to="/trace" replace />;
  return <OfNumber asked={{ supplierLot, ...(supplier && { supplierId: supplier }) }} />;
}

function OfNumber({ asked }: { asked: InputOf<typeof traceSupplierLot> }) {
  const { data, error, refetch } = useQuery(ask(traceSupplierLot, asked));
  if (data) return <SupplierLotSheet trace={data} asked={asked} />;
  return error ? <PageProblem error={error} onRetry={() => void refetch()} /> : <Loading />;
}
