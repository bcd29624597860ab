import { Button } from '../../../ui/button';
import { LinkButton } from '../../../ui/link-button';

/** The way back: to the question before, or out of the form. */
export function StepBack({ isFirst, onBack }: { isFirst: boolean; onBack: () => void }) {
  return <div>{isFirst ? <LinkButton to="/receiving">Back to the deliveries</LinkButton> : <Button onClick={onBack}>Back</Button>}</div>;
}
