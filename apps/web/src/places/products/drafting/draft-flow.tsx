import { sayLimit, supportLacking } from '@larderbook/haccp';
import { Link } from '@tanstack/react-router';
import { announce } from '../../../ui/announcer';
import flow from '../document/flow-diagram.module.css';
import { pointKindWords, pointsAt, type Step } from '../document/plan-words';
import { LineHands } from '../line-hands';
import { useShop } from '../../../api/use-shop';
import css from './drafting.module.css';
import { moveStep } from './edit-plan';
import { errorsUnder } from './plan-draft';
import type { Drafting } from './with-draft';

/** The flow diagram being written: each step and each control point opens its own page; steps change places here. */
export function DraftFlow(drafting: Drafting) {
  const { content, errors, change, productId } = drafting;
  const move = (step: Step, by: -1 | 1) => {
    const moved = moveStep(content, step.stepId, by);
    change(moved);
    announce(`${step.name} is step ${moved.steps.indexOf(step) + 1} of ${moved.steps.length}`, { unseen: true });
  };
  return (
    <ol className={flow.flow} aria-label="Steps of the flow diagram">
      {content.steps.map((step, i) => (
        <li key={step.stepId} className={flow.step}>
          <span className={flow.number} aria-hidden="true">
            {i + 1}
          </span>
          <div className={flow.what}>
            <div className={css.stepHead}>
              <h3>
                <Link to="/products/$productId/plan/steps/$stepId" params={{ productId, stepId: step.stepId }} className={css.open}>
                  {step.name || `Step ${i + 1}, without a name`}
                </Link>
              </h3>
              <div className={css.hands}>
                <LineHands called={step.name || `step ${i + 1}`} onMove={(by) => move(step, by)} />
              </div>
            </div>
            <p className={flow.small}>{sayHazards(step)}</p>
            <Missing count={Object.keys(errorsUnder(errors, `steps.${i}`)).length} />
          </div>
          <Points drafting={drafting} stepId={step.stepId} />
        </li>
      ))}
    </ol>
  );
}

function Points({ drafting: { content, errors, productId }, stepId }: { drafting: Drafting; stepId: string }) {
  const { degrees } = useShop();
  return (
    <ul className={flow.points}>
      {pointsAt(content, stepId).map((point) => (
        <li key={point.controlPointId} className={flow.tag} data-kind={point.kind}>
          <Link
            to="/products/$productId/plan/points/$controlPointId"
            params={{ productId, controlPointId: point.controlPointId }}
            className={flow.tagName}
          >
            {point.name || 'Without a name'}
          </Link>
          <span className={flow.small}>{pointKindWords[point.kind]}</span>
          {point.limits.map(({ limitId, limit }) => limit.kind !== 'attestation' && <span key={limitId}>{sayLimit(limit, degrees)}</span>)}
          {point.limits.some(({ limit }) => supportLacking(limit).length > 0) && (
            <p className={css.fault}>What supports its limit is not said yet; open it.</p>
          )}
          <Missing count={Object.keys(errorsUnder(errors, `controlPoints.${content.controlPoints.indexOf(point)}`)).length} />
        </li>
      ))}
    </ul>
  );
}

function Missing({ count }: { count: number }) {
  if (count === 0) return null;
  const what = count === 1 ? 'One thing is missing' : `${count} things are missing`;
  return <p className={css.fault}>{what}; open it to see.</p>;
}

function sayHazards({ hazards }: Step): string {
  if (hazards.length === 0) return 'No hazard is named.';
  const likely = hazards.filter((hazard) => hazard.likely).length;
  return `${hazards.length} ${hazards.length === 1 ? 'hazard' : 'hazards'}, ${likely === 0 ? 'none' : likely} likely`;
}
