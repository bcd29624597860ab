import { demonstrationProgress } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import css from './demonstration.module.css';
import { useFigures, useSay } from '../../../ui/voice';

const aSecond = 1000;

export function MakingProgress() {
  const say = useSay('welcome');
  const { number } = useFigures();
  const { data } = useQuery({ ...ask(demonstrationProgress, {}), refetchInterval: aSecond });
  const isTold = data !== undefined && data.all > 0;
  return (
    <div className={css.making}>
      <p role="status">
        <strong>{say('making')}</strong> {say('making-how')}
      </p>
      <progress
        className={css.progress}
        aria-label={say('entries-of-demonstration')}
        value={isTold ? data.done : undefined}
        max={isTold ? data.all : undefined}
      />
      <p className={css.done}>{isTold ? say('entries-done', { done: number(data.done), all: number(data.all) }) : say('first-come')}</p>
    </div>
  );
}
