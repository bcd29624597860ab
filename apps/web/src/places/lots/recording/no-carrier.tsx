import type { ControlPoint } from '@larderbook/contracts';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';

/**
 * The plan limits a substance, but no ingredient of the formula carries it: nothing can be weighed, so somebody must
 * decide.
 */
export function NoCarrier({ point, onReport, onClose }: { point: ControlPoint; onReport: () => void; onClose: () => void }) {
  return (
    <Dialog title={point.name} onClose={onClose} actions={<Button onClick={onReport}>Report it on this lot</Button>}>
      <p>
        The plan limits this, but the formula of this lot has no ingredient that carries it. Either the formula or the plan is to be
        corrected by the owner; on this lot it is reported and settled like anything unforeseen.
      </p>
    </Dialog>
  );
}
