import { type InputOf, type SupplierLotTrace, type traceSupplierLot } from '@larderbook/contracts';
import { LinkButton } from '../../ui/link-button';
import { Row, Stack } from '../../ui/stack';
import { Status } from '../../ui/status';
import { useSay } from '../../ui/voice';

type OtherSuppliersProps = { trace: SupplierLotTrace; asked: InputOf<typeof traceSupplierLot> };

/** Two suppliers may use one number. */
export function OtherSuppliers({ trace: { usedBy, supplierLot }, asked }: OtherSuppliersProps) {
  const say = useSay('trace');
  if (usedBy.length < 2) return null;
  const isOne = asked.supplierId !== undefined;
  return (
    <Stack gap="near">
      <Status
        state="undetermined"
        word={say('shared-number', { count: usedBy.length })}
        margin={say(isOne ? 'only-one-traced' : 'all-traced')}
      />
      <Row>
        {isOne && (
          <LinkButton to="/trace/supplier-lot" search={{ lot: supplierLot }}>
            {say('trace-all')}
          </LinkButton>
        )}
        {usedBy
          .filter(({ supplierId }) => supplierId !== asked.supplierId)
          .map(({ supplierId, supplier, deliveries }) => (
            <LinkButton key={supplierId} to="/trace/supplier-lot" search={{ lot: supplierLot, supplier: supplierId }}>
              {say('trace-only', { supplier, count: deliveries })}
            </LinkButton>
          ))}
      </Row>
    </Stack>
  );
}
