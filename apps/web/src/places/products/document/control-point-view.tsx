import { clockStart, sayClockStart, type ControlPoint, type PlanContent } from '@larderbook/contracts';
import { isStirred, sayErrors, sayFrequency, sayPiece } from '@larderbook/haccp';
import css from './control-point-view.module.css';
import { LimitView } from './limit-view';
import { pointKindWords, saySurroundings, stepName, takenAsWords } from './plan-words';

/** One control point in full: hazard, limits and their source, who looks how often, and what is done on a miss. */
export function ControlPointView({ point, content }: { point: ControlPoint; content: PlanContent }) {
  const { controlPointId, kind, name, stepId, hazard, limits, takenAs, probes, monitoring, correctiveAction, verification } = point;
  const before = content.controlPoints.find((other) => other.controlPointId === point.follows);
  return (
    <article className={css.point} data-kind={kind} id={controlPointId} aria-labelledby={`${controlPointId}-name`}>
      <header className={css.head}>
        <h3 id={`${controlPointId}-name`}>{name}</h3>
        <p>
          {pointKindWords[kind]} at {stepName(content, stepId)}
        </p>
      </header>
      <dl className={css.facts}>
        <Fact name="Hazard">{hazard}</Fact>
        <Fact name={limits.length === 1 ? 'Limit' : 'Limits'}>
          {limits.map(({ limitId, limit }) => (
            <LimitView key={limitId} limit={limit} />
          ))}
        </Fact>
        {before && (
          <Fact name={takenAs === 'curve' ? 'Clock starts' : 'Follows'}>
            {takenAs === 'curve' ? sayClockStart(clockStart(point, content.controlPoints)) : before.name}
          </Fact>
        )}
        <Fact name="What is measured">{monitoring.what}</Fact>
        <Fact name="How">{monitoring.how}</Fact>
        <Fact name="How often">{monitoring.howOften}</Fact>
        {point.frequency && <Fact name="Fewest readings">{sayFrequency(point.frequency)}; the review says where fewer were taken</Fact>}
        <Fact name="By whom">{monitoring.who}</Fact>
        <Fact name="Recorded as">
          {takenAsWords[takenAs]}
          {probes.length > 0 && `; probes: ${probes.join(', ')}`}
          {sayPlausible(point)}
        </Fact>
        {point.surroundings && <Fact name="Lies in">{saySurroundings(point)}; judged by no limit</Fact>}
        {point.piece && (
          <Fact name="Piece">
            {sayPiece(point.piece)}
            {isStirred(point.piece) ? '; its speed is not judged' : ': no core moves faster than it can'}
          </Fact>
        )}
        {point.errors && <Fact name="Allowed for">{sayErrors(point.errors).join('; ')}</Fact>}
        <Fact name="When it is missed">
          <span className={css.action}>{correctiveAction}</span>
        </Fact>
        <Fact name="Verification">{verification || 'not written yet'}</Fact>
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

function sayPlausible({ plausible }: ControlPoint): string {
  if (!plausible) return '';
  const say = ([least, most]: [number, number]) => `${least / 100} to ${most / 100}`.replaceAll('-', '−');
  return `; asked about outside ${say(plausible['°F'])} °F (${say(plausible['°C'])} °C)`;
}
