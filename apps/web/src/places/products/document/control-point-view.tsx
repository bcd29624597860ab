import { clockStart, type ControlPoint, type PlanContent } from '@larderbook/contracts';
import { isStirred } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import css from './control-point-view.module.css';
import { LimitView } from './limit-view';
import { plausibleWords, stepName, surroundingsWords } from './plan-words';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';

export function ControlPointView({ point, content }: { point: ControlPoint; content: PlanContent }) {
  const say = useSay('plans');
  const { sayClockStart, sayErrors, sayFrequency, sayPiece } = useLimits();
  const { controlPointId, kind, name, stepId, hazard, limits, takenAs, probes, monitoring, correctiveAction, verification } = point;
  const before = content.controlPoints.find((other) => other.controlPointId === point.follows);
  return (
    <article className={css.point} data-kind={kind} id={controlPointId} aria-labelledby={`${controlPointId}-name`}>
      <header className={css.head}>
        <h3 id={`${controlPointId}-name`}>{name}</h3>
        <p>{say('kind-at-step', { kind: say(codeOf('kind', kind)), step: stepName(content, stepId) })}</p>
      </header>
      <dl className={css.facts}>
        <Fact name={say('hazard')}>{hazard}</Fact>
        <Fact name={say(limits.length === 1 ? 'limit' : 'limits')}>
          {limits.map(({ limitId, limit }) => (
            <LimitView key={limitId} limit={limit} />
          ))}
        </Fact>
        {before && (
          <Fact name={say(takenAs === 'curve' ? 'clock-starts' : 'follows')}>
            {takenAs === 'curve' ? sayClockStart(clockStart(point, content.controlPoints)) : before.name}
          </Fact>
        )}
        <Fact name={say('what-is-measured')}>{monitoring.what}</Fact>
        <Fact name={say('how')}>{monitoring.how}</Fact>
        <Fact name={say('how-often')}>{monitoring.howOften}</Fact>
        {point.frequency && (
          <Fact name={say('fewest-readings')}>{say('fewest-reviewed', { frequency: sayFrequency(point.frequency) })}</Fact>
        )}
        <Fact name={say('by-whom')}>{monitoring.who}</Fact>
        <Fact name={say('recorded-as')}>{say(codeOf('taken', takenAs))}</Fact>
        {probes.length > 0 && <Fact name={say('probes')}>{probes.join(', ')}</Fact>}
        {point.plausible && <Fact name={say('asked-outside')}>{plausibleWords(point, say)}</Fact>}
        {point.surroundings && <Fact name={say('lies-in')}>{say('judged-by-none', { surroundings: surroundingsWords(point, say) })}</Fact>}
        {point.piece && (
          <Fact name={say('piece')}>
            {say(isStirred(point.piece) ? 'piece-unjudged' : 'piece-bounds', { piece: sayPiece(point.piece) })}
          </Fact>
        )}
        {point.errors && <Fact name={say('allowed-for')}>{sayErrors(point.errors).join('; ')}</Fact>}
        <Fact name={say('when-missed')}>
          <span className={css.action}>{correctiveAction}</span>
        </Fact>
        <Fact name={say('verification')}>{verification || say('not-written-yet')}</Fact>
      </dl>
    </article>
  );
}

function Fact({ name, children }: { name: string; children: React.ReactNode }) {
  return (
    <div className={css.fact}>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
