import type { LimitThatApplies, ProductLimits } from '@larderbook/contracts';
import { Status } from '../../../ui/status';
import css from './applying.module.css';
import { inPlanWords } from './in-plan-words';
import { needsWords } from './needs-words';
import { useSay } from '../../../ui/voice';
import { codeOf } from '@larderbook/messages';

type LimitLineProps = { limit: LimitThatApplies; plan: ProductLimits['plan'] };

export function LimitLine({ limit, plan }: LimitLineProps) {
  const say = useSay('product-limits');
  const { title, says, isForClass, alsoNeeds, force, known, source, note, ended, inPlan } = limit;
  const said = inPlanWords(inPlan, plan, say);
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
        {say(isForClass ? 'for-its-class' : 'for-every-product')} {say(codeOf('force', force))}
      </p>
      {alsoNeeds.length > 0 && <p className={css.small}>{say('also-needs', { needs: needsWords(alsoNeeds) })}</p>}
      {note && <p className={css.small}>{note}</p>}
      <p className={css.standing}>
        {said && <Status {...said} />}
        {ended && <Status state="undetermined" word={say('no-longer')} margin={say('did-until', { day: ended })} />}
        {!source.confirmed && <Status state="undetermined" word={say('unconfirmed')} margin={say(codeOf('known', known))} />}
      </p>
    </li>
  );
}

const where = ({ source: { citation, edition }, paragraph }: LimitThatApplies): string =>
  [citation, ...[edition, paragraph].filter((part) => part && !citation.includes(part))].join(', ');
