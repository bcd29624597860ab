import { useParams } from '@tanstack/react-router';
import { EmptyState } from '../../ui/empty-state';
import { LinkButton } from '../../ui/link-button';
import { FiguresFrame } from './figures-frame';
import { forms } from './forms';
import { WorkOut } from './working/work-out';

/** One calculation: what it asks, and its working. */
export function CalculationPage() {
  const { calculation } = useParams({ strict: false });
  const form = forms.find(({ name }) => name === calculation);
  if (!form) {
    return (
      <FiguresFrame title="Work it out">
        <EmptyState title="There is no such calculation" action={<LinkButton to="/figures">All calculations</LinkButton>} />
      </FiguresFrame>
    );
  }
  return (
    <FiguresFrame title={form.title} under={form.about}>
      <WorkOut key={form.name} form={form} />
    </FiguresFrame>
  );
}
