import type { Lot, weighIn } from '@larderbook/contracts';
import type { Saved } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import type { VerdictOn } from '../preview/verdict-on';
import type { Onward } from './doing';
import { SavedDialog } from './saved-dialog';

type SavedWeighingProps = {
  lot: Lot;
  ingredient: string;
  what: string;
  saved: Saved<typeof weighIn>;
  preview: VerdictOn[];
  onNext?: Onward;
  onClose: () => void;
};

/** Leads to the next ingredient unless a deviation comes first. */
export function SavedWeighing({ lot, ingredient, what, saved, preview, onNext, onClose }: SavedWeighingProps) {
  const told = saved.state === 'sent' ? saved.reply : undefined;
  const point = lot.controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === told?.controlPointId)?.controlPoint;
  return (
    <SavedDialog
      title={ingredient}
      limits={point?.limits}
      what={what}
      saved={saved}
      preview={preview}
      correctiveAction={point?.correctiveAction}
      onClose={onClose}
    >
      {onNext && !told?.deviationId && (
        <Button look="primary" onClick={onNext.go}>
          {onNext.words}
        </Button>
      )}
    </SavedDialog>
  );
}
