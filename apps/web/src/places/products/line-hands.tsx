import { Button } from '../../ui/button';
import { useSay } from '../../ui/voice';

export type LineHandsProps = { called: string; onMove: (by: -1 | 1) => void; onRemove?: () => void };

export function LineHands({ called, onMove, onRemove }: LineHandsProps) {
  const sayShared = useSay('shared');
  const say = useSay('products');
  return (
    <>
      <Button look="quiet" aria-label={say('move-up', { name: called })} onClick={() => onMove(-1)}>
        <Arrow points="M4 13L10 6l6 7" />
      </Button>
      <Button look="quiet" aria-label={say('move-down', { name: called })} onClick={() => onMove(1)}>
        <Arrow points="M4 7l6 7 6-7" />
      </Button>
      {onRemove && (
        <Button look="quiet" aria-label={say('remove-named', { name: called })} onClick={onRemove}>
          {sayShared('remove')}
        </Button>
      )}
    </>
  );
}

function Arrow({ points }: { points: string }) {
  return (
    <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
      <path d={points} fill="none" stroke="currentColor" strokeWidth="2.6" />
    </svg>
  );
}
