import { useParams } from '@tanstack/react-router';
import { EmptyState } from '../../ui/empty-state';
import { LinkButton } from '../../ui/link-button';
import { CalculatorsFrame } from './calculators-frame';
import { forms } from './forms';
import { WorkOut } from './calculation/work-out';

/** One calculation: what it asks, and its working. */
export function CalculationPage() {
  const { calculation } = useParams({ strict: false });
  const form = forms.find(({ name }) => name === calculation);
  if (!form) {
    return (
      <CalculatorsFrame title="Work it out">
        <EmptyState title="There is no such calculation" action={<LinkButton to="/calculators">All calculations</LinkButton>} />
      </CalculatorsFrame>
    );
  }
  return (
    <CalculatorsFrame title={form.title} under={form.about}>
      <WorkOut key={form.name} form={form} />
    </CalculatorsFrame>
  );
}
