import { useParams } from '@tanstack/react-router';
import { EmptyState } from '../../ui/empty-state';
import { LinkButton } from '../../ui/link-button';
import { CalculatorsFrame } from './calculators-frame';
import { forms } from './forms';
import { CalculatorView } from './calculator/calculator-view';
import { useSay } from '../../ui/voice';

/** One calculator: what it asks, and its calculation. */
export function CalculatorPage() {
  const say = useSay('calculators');
  const { calculator } = useParams({ strict: false });
  const form = forms.find(({ name }) => name === calculator);
  if (!form) {
    return (
      <CalculatorsFrame title={say('calculators')}>
        <EmptyState title={say('no-such-calculator')} action={<LinkButton to="/calculators">{say('all-calculators')}</LinkButton>} />
      </CalculatorsFrame>
    );
  }
  return (
    <CalculatorsFrame title={form.title} under={form.about}>
      <CalculatorView key={form.name} form={form} />
    </CalculatorsFrame>
  );
}
