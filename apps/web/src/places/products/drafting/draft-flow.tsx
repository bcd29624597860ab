import { kindOf, supportLacking } from '@larderbook/haccp';
import { Link } from '@tanstack/react-router';
import { announce } from '../../../ui/announcer';
import flow from '../document/flow-diagram.module.css';
import { pointsAt, type Step } from '../document/plan-words';
import { LineHands } from '../line-hands';
import { useShop } from '../../../api/use-shop';
import css from './drafting.module.css';
import { moveStep } from './edit-plan';
import { errorsUnder } from './plan-draft';
import type { Drafting } from './with-draft';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';
import { codeOf, type Say, type WordsOf } from '@larderbook/messages';

export function DraftFlow(drafting: Drafting) {
  const say = useSay('plan-drafts');
  const { content, errors, change, productId } = drafting;
  const move = (step: Step, by: -1 | 1) => {
    const moved = moveStep(content, step.stepId, by);
    change(moved);
    announce(say('step-place', { name: step.name, number: moved.steps.indexOf(step) + 1, count: moved.steps.length }), { unseen: true });
  };
  return (
    <ol className={flow.flow} aria-label={say('flow-steps')}>
      {content.steps.map((step, i) => (
        <li key={step.stepId} className={flow.step}>
          <span className={flow.number} aria-hidden="true">
            {i + 1}
          </span>
          <div className={flow.what}>
            <div className={css.stepHead}>
              <h3>
                <Link to="/products/$productId/plan/steps/$stepId" params={{ productId, stepId: step.stepId }} className={css.open}>
                  {step.name || say('step-unnamed', { number: i + 1 })}
                </Link>
              </h3>
              <div className={css.hands}>
                <LineHands called={step.name || say('step-number', { number: i + 1 })} onMove={(by) => move(step, by)} />
              </div>
            </div>
            <p className={flow.small}>{hazardWords(step, say)}</p>
            <Missing count={Object.keys(errorsUnder(errors, `steps.${i}`)).length} />
          </div>
          <Points drafting={drafting} stepId={step.stepId} />
        </li>
      ))}
    </ol>
  );
}

function Points({ drafting: { content, errors, productId }, stepId }: { drafting: Drafting; stepId: string }) {
  const say = useSay('plan-drafts');
  const sayPlans = useSay('plans');
  const { sayLimit } = useLimits();
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
            {point.name || say('without-a-name')}
          </Link>
          <span className={flow.small}>{sayPlans(codeOf('kind', point.kind))}</span>
          {point.limits.map(
            ({ limitId, limit }) => kindOf(limit).takenAs !== 'attestation' && <span key={limitId}>{sayLimit(limit, degrees)}</span>,
          )}
          {point.limits.some(({ limit }) => supportLacking(limit).length > 0) && <p className={css.fault}>{say('support-unsaid')}</p>}
          <Missing count={Object.keys(errorsUnder(errors, `controlPoints.${content.controlPoints.indexOf(point)}`)).length} />
        </li>
      ))}
    </ul>
  );
}

function Missing({ count }: { count: number }) {
  const say = useSay('plan-drafts');
  if (count === 0) return null;
  return <p className={css.fault}>{say('open-to-see', { count })}</p>;
}

function hazardWords({ hazards }: Step, say: Say<WordsOf<'plan-drafts'>>): string {
  const count = hazards.length;
  if (count === 0) return say('no-hazard');
  const likely = hazards.filter((hazard) => hazard.likely).length;
  return likely === 0 ? say('hazards-none-likely', { count }) : say('hazards-likely', { count, likely });
}
