import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { sayLimit } from '@larderbook/haccp';
import { useShop } from '../../../api/use-shop';
import css from './flow-diagram.module.css';
import { hazardKindWords, likelyWords, pointKindWords, pointsAt, type Step } from './plan-words';

/** The flow diagram: steps down one ruled line, their hazards beside them, control points hanging at their step. */
export function FlowDiagram({ content }: { content: PlanContent }) {
  return (
    <ol className={css.flow} data-reading aria-label="Steps of the flow diagram">
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
  if (hazards.length === 0) return <p className={css.small}>No hazard is named.</p>;
  return (
    <ul className={css.hazards}>
      {hazards.map(({ kind, what, likely }) => (
        <li key={what} data-likely={likely || undefined}>
          {hazardKindWords[kind]}: {what}. <span className={css.likely}>{likelyWords(likely)}</span>
        </li>
      ))}
    </ul>
  );
}

function Tag({ point: { controlPointId, kind, name, limits } }: { point: ControlPoint }) {
  const { degrees } = useShop();
  return (
    <li className={css.tag} data-kind={kind}>
      <a href={`#${controlPointId}`} className={css.tagName}>
        {name}
      </a>
      <span className={css.small}>{pointKindWords[kind]}</span>
      {limits.map(({ limitId, limit }) => limit.kind !== 'attestation' && <span key={limitId}>{sayLimit(limit, degrees)}</span>)}
    </li>
  );
}
