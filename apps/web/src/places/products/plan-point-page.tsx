import { useParams } from '@tanstack/react-router';
import { NotThere } from './drafting/not-there';
import { PointView } from './drafting/point-view';
import { WithDraft } from './drafting/with-draft';

/** One control point of the plan being written. */
export function PlanPointPage() {
  const { controlPointId } = useParams({ strict: false });
  return (
    <WithDraft>
      {(drafting) => {
        const point = drafting.content.controlPoints.find((each) => each.controlPointId === controlPointId);
        return point ? (
          <PointView key={controlPointId} drafting={drafting} point={point} />
        ) : (
          <NotThere title="This control point is not in the plan" productId={drafting.productId} />
        );
      }}
    </WithDraft>
  );
}
