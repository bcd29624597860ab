import { codeOf } from '@larderbook/messages';
import { CorrectedList } from '../../../ui/corrected-list';
import { BothMoments } from '../../../ui/moment';
import { useTell } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';
import { knownMethod, type Instrument } from './check-method';
import css from './instruments.module.css';

type LastCheckProps = { instrument: Pick<Instrument, 'lastCheck' | 'corrections'>; zone: string };

export function LastCheck({ instrument: { lastCheck, corrections }, zone }: LastCheckProps) {
  const say = useSay('instruments');
  const { tell } = useTell();
  if (!lastCheck && corrections.length === 0) return say('no-check');
  const method = lastCheck && knownMethod(lastCheck.method);
  return (
    <div>
      {corrections.length > 0 && <CorrectedList corrections={corrections.slice(-1)} zone={zone} />}
      {lastCheck ? (
        <>
          {tell(lastCheck.verdict).measured}
          <span className={css.small}>
            <BothMoments at={lastCheck.made.at} recordedAt={lastCheck.made.recordedAt} zone={zone} />, {lastCheck.made.name},{' '}
            {method ? say(codeOf('method', method)) : lastCheck.method}
          </span>
        </>
      ) : (
        say('none-that-counts')
      )}
    </div>
  );
}
