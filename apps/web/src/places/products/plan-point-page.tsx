import { useParams } from '@tanstack/react-router';
import { NotThere } from './drafting/not-there';
import { PointView } from './drafting/point-view';
import { WithDraft } from './drafting/with-draft';
import { useSay } from '../../ui/voice';

export function PlanPointPage() {
  const say = useSay('plan-drafts');
  const { productId, controlPointId } = useParams({ from: '/products/$productId/plan/points/$controlPointId' });
  return (
    <WithDraft productId={productId}>
      {(drafting) => {
        const point = drafting.content.controlPoints.find((each) => each.controlPointId === controlPointId);
        return point ? (
          <PointView key={controlPointId} drafting={drafting} point={point} />
        ) : (
          <NotThere title={say('point-not-there')} productId={productId} />
        );
      }}
    </WithDraft>
  );
}
