import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { kindOf } from '@larderbook/haccp';
import { useShop } from '../../../api/use-shop';
import css from './flow-diagram.module.css';
import { pointsAt, type Step } from './plan-words';
import { codeOf } from '@larderbook/messages';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';

export function FlowDiagram({ content }: { content: PlanContent }) {
  const say = useSay('plans');
  return (
    <ol className={css.flow} data-reading aria-label={say('flow-steps')}>
      {content.steps.map((step, i) => (
        <li key={step.stepId} className={css.step}>
          <span className={css.number} aria-hidden="true">
            {i + 1}
          </span>
          <div className={css.what}>
            <h3>{step.name}</h3>
            <Hazards hazards={step.hazards} />
          </div>
          <ul className={css.points}>
            {pointsAt(content, step.stepId).map((point) => (
              <Tag key={point.controlPointId} point={point} />
            ))}
          </ul>
        </li>
      ))}
    </ol>
  );
}

function Hazards({ hazards }: Pick<Step, 'hazards'>) {
  const say = useSay('plans');
  if (hazards.length === 0) return <p className={css.small}>{say('no-hazard')}</p>;
  return (
    <ul className={css.hazards}>
      {hazards.map(({ kind, what, likely }) => (
        <li key={what} data-likely={likely || undefined}>
          {say('hazard-named', { kind: say(codeOf('hazard', kind)), what })}.{' '}
          <span className={css.likely}>{say(likely ? 'likely' : 'not-likely')}</span>
        </li>
      ))}
    </ul>
  );
}

function Tag({ point: { controlPointId, kind, name, limits } }: { point: ControlPoint }) {
  const say = useSay('plans');
  const { sayLimit } = useLimits();
  const { degrees } = useShop();
  return (
    <li className={css.tag} data-kind={kind}>
      <a href={`#${controlPointId}`} className={css.tagName}>
        {name}
      </a>
      <span className={css.small}>{say(codeOf('kind', kind))}</span>
      {limits.map(({ limitId, limit }) => kindOf(limit).takenAs !== 'attestation' && <span key={limitId}>{sayLimit(limit, degrees)}</span>)}
    </li>
  );
}
