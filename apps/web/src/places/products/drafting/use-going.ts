import { useNavigate } from '@tanstack/react-router';

export function useGoing(productId: string) {
  const navigate = useNavigate();
  return {
    toPlan: () => navigate({ to: '/products/$productId/plan', params: { productId } }),
    toStep: (stepId: string) =>
      navigate({
        to: '/products/$productId/plan/steps/$stepId',
        params: { productId, stepId },
      }),
    toPoint: (controlPointId: string) =>
      navigate({
        to: '/products/$productId/plan/points/$controlPointId',
        params: { productId, controlPointId },
      }),
  };
}
