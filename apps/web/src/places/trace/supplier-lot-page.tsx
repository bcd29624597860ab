import { traceSupplierLot, type InputOf } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { Navigate, useSearch } from '@tanstack/react-router';
import { ask } from '../../api/ask';
import { Loading } from '../../ui/loading';
import { PageProblem } from '../../ui/page-problem';
import { SupplierLotSheet } from './supplier-lot-sheet';

/** Every delivery of a supplier's lot number, and everything after them; without a number it is to be found first. */
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
