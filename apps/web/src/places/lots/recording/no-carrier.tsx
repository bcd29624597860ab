import type { ControlPoint } from '@larderbook/contracts';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { useSay } from '../../../ui/voice';

/** The plan limits a substance that no ingredient of the formula carries: somebody must decide. */
export function NoCarrier({ point, onReport, onClose }: { point: ControlPoint; onReport: () => void; onClose: () => void }) {
  const say = useSay('lot-forms');
  return (
    <Dialog title={point.name} onClose={onClose} actions={<Button onClick={onReport}>{say('report-it')}</Button>}>
      <p>{say('no-carrier')}</p>
    </Dialog>
  );
}
