import { useSession } from '../../api/session';
import { LinkButton } from '../../ui/link-button';
import { Row } from '../../ui/stack';
import css from './read-only.module.css';

/** For an inspector: what this sign-in shows, how to read it, and where the rest is. */
export function ReadOnly() {
  const who = useSession();
  return (
    <section className={css.sheet} aria-label="For the inspector">
      <p className={css.lead}>
        You are signed in to read the records of {who?.establishment.name}. Everything can be opened and printed; nothing can be changed
        from here.
      </p>
      <ul className={css.points}>
        <li>A record shows the value as it was entered, in its unit, who entered it and when it was taken.</li>
        <li>
          Nothing is overwritten. A correction is an entry of its own with its reason, and what stood there before stays, struck through.
        </li>
        <li>
          A missed limit opens a deviation by itself; its lot is on hold until the corrective action, the disposition and the closing are
          recorded.
        </li>
        <li>
          Every record is a line of one chain. Its head is printed on every paper, so a paper shows what the book held when it was printed.
        </li>
      </ul>
      <Row>
        <LinkButton to="/lots">Lots</LinkButton>
        <LinkButton to="/deviations">Deviations</LinkButton>
        <LinkButton to="/products">Plans</LinkButton>
        <LinkButton to="/trace">Trace</LinkButton>
      </Row>
    </section>
  );
}
