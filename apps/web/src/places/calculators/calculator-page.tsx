import { getRouteApi } from '@tanstack/react-router';
import { EmptyState } from '../../ui/empty-state';
import { LinkButton } from '../../ui/link-button';
import { useSay } from '../../ui/voice';
import { CalculatorView } from './calculator/calculator-view';
import { CalculatorsFrame } from './calculators-frame';
import { forms } from './forms';

const route = getRouteApi('/calculators/$calculator');

export function CalculatorPage() {
  const say = useSay('calculators');
  const sayList = useSay('calculators-list');
  const { calculator } = route.useParams();
  const form = forms.find(({ name }) => name === calculator);
  if (!form) {
    return (
      <CalculatorsFrame title={say('calculators')}>
        <EmptyState title={say('no-such-calculator')} action={<LinkButton to="/calculators">{say('all-calculators')}</LinkButton>} />
      </CalculatorsFrame>
    );
  }
  return (
    <CalculatorsFrame title={sayList(form.name)} under={sayList(`${form.name}.about`)}>
      <CalculatorView key={form.name} form={form} />
    </CalculatorsFrame>
  );
}
