import type { LimitThatApplies, ProductLimits } from '@larderbook/contracts';
import { Status } from '../../../ui/status';
import css from './applying.module.css';
import { sayInPlan } from './in-plan-words';
import { sayNeeds } from './say-needs';

type LimitLineProps = { limit: LimitThatApplies; plan: ProductLimits['plan'] };

/** One limit: what is printed, why it applies, where it stands, what it also needs, and what the plan does about it. */
export function LimitLine({ limit, plan }: LimitLineProps) {
  const { title, says, why, alsoNeeds, force, known, source, note, ended, inPlan } = limit;
  const said = sayInPlan(inPlan, plan);
  return (
    <li className={css.limit}>
      <h3>{title}</h3>
      <p className={css.figure}>
        {says.map((line) => (
          <span key={line}>{line}</span>
        ))}
      </p>
      <p className={css.small}>
        {source.url ? (
          <a href={source.url} rel="noopener noreferrer" target="_blank">
            {where(limit)}
          </a>
        ) : (
          where(limit)
        )}
        {'. '}
        {why} {sayForce[force] ?? force}
      </p>
      {alsoNeeds.length > 0 && <p className={css.small}>It also needs: {sayNeeds(alsoNeeds)}.</p>}
      {note && <p className={css.small}>{note}</p>}
      <p className={css.standing}>
        {said && <Status {...said} />}
        {ended && <Status state="undetermined" word="No longer counts" margin={`it did until ${ended}`} />}
        {!source.confirmed && <Status state="undetermined" word="Not confirmed in the source itself" margin={known} />}
      </p>
    </li>
  );
}

const sayForce: Record<string, string> = {
  law: 'It is law.',
  standard: 'It is a standard.',
  guide: 'It is guidance.',
  industry: 'It is a guide of the trade.',
  archived: 'It is from a text that was withdrawn.',
};

/** Citation, edition and paragraph, each once. */
const where = ({ source: { citation, edition }, paragraph }: LimitThatApplies): string =>
  [citation, ...[edition, paragraph].filter((part) => part && !citation.includes(part))].join(', ');
