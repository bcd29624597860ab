import { useSession } from '../../api/session';
import { LinkButton } from '../../ui/link-button';
import { Row } from '../../ui/stack';
import { useSay } from '../../ui/voice';
import css from './read-only.module.css';

export function ReadOnly() {
  const say = useSay('papers');
  const who = useSession();
  return (
    <section className={css.sheet} aria-label={say('for-inspector')}>
      <p className={css.lead}>{say('signed-in-to-read', { establishment: who?.establishment.name ?? '' })}</p>
      <ul className={css.points}>
        <li>{say('as-entered')}</li>
        <li>{say('never-overwritten')}</li>
        <li>{say('deviation-opens')}</li>
        <li>{say('one-chain')}</li>
      </ul>
      <Row>
        <LinkButton to="/lots">{say('lots')}</LinkButton>
        <LinkButton to="/deviations">{say('deviations')}</LinkButton>
        <LinkButton to="/products">{say('plans')}</LinkButton>
        <LinkButton to="/trace">{say('trace')}</LinkButton>
      </Row>
    </section>
  );
}
