import { Button } from '../../../ui/button';
import { LinkButton } from '../../../ui/link-button';
import { useSay } from '../../../ui/voice';

export function StepBack({ isFirst, onBack }: { isFirst: boolean; onBack: () => void }) {
  const say = useSay('receiving');
  const sayShared = useSay('shared');
  return (
    <div>
      {isFirst ? (
        <LinkButton to="/receiving">{say('back-to-deliveries')}</LinkButton>
      ) : (
        <Button onClick={onBack}>{sayShared('back')}</Button>
      )}
    </div>
  );
}
