import { Link } from '@tanstack/react-router';

/** The way back from a step or a control point to the plan being written. */
export function BackToDraft({ productId }: { productId: string }) {
  return (
    <Link to="/products/$productId/plan" params={{ productId }}>
      The plan being written
    </Link>
  );
}
