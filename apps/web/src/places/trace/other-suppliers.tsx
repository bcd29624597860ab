import { type InputOf, type SupplierLotTrace, type traceSupplierLot } from '@larderbook/contracts';
import { LinkButton } from '../../ui/link-button';
import { Row, Stack } from '../../ui/stack';
import { Status } from '../../ui/status';
import { many } from './many';

type OtherSuppliersProps = { trace: SupplierLotTrace; asked: InputOf<typeof traceSupplierLot> };

/** Two suppliers may use one number: which of them this sheet is about is said, and the others are one tap away. */
export function OtherSuppliers({ trace: { usedBy, supplierLot }, asked }: OtherSuppliersProps) {
  if (usedBy.length < 2) return null;
  const isOne = asked.supplierId !== undefined;
  return (
    <Stack gap="near">
      <Status
        state="undetermined"
        word={`${usedBy.length} suppliers use this number`}
        margin={isOne ? 'only one of them is traced here' : 'all of them are traced here'}
      />
      <Row>
        {isOne && (
          <LinkButton to="/trace/supplier-lot" search={{ lot: supplierLot }}>
            All of them
          </LinkButton>
        )}
        {usedBy
          .filter(({ supplierId }) => supplierId !== asked.supplierId)
          .map(({ supplierId, supplier, deliveries }) => (
            <LinkButton key={supplierId} to="/trace/supplier-lot" search={{ lot: supplierLot, supplier: supplierId }}>
              Only {supplier}, {many(deliveries, 'delivery', 'deliveries')}
            </LinkButton>
          ))}
      </Row>
    </Stack>
  );
}
