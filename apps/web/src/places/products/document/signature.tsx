import type { Plan } from '@larderbook/contracts';
import { Moment } from '../../../ui/moment';
import { useShop } from '../../../api/use-shop';
import css from './signature.module.css';

/** What was signed, by whom and when; or that nobody has signed yet. */
export function Signature({ plan }: { plan: Plan }) {
  const { version, statement, adoptedAt, adoptedBy, recordedAt, recordedBy, inForce } = plan;
  const { zone } = useShop();
  return (
    <div className={css.signature}>
      {adoptedAt ? (
        <>
          <blockquote className={css.statement}>{statement}</blockquote>
          <p className={css.line}>
            <strong>{adoptedBy}</strong>
            <span>
              <Moment at={adoptedAt} zone={zone} />
            </span>
          </p>
          {inForce ? (
            <p className={css.small}>
              Signed and frozen. It holds until another version is adopted. Reassess it at least once a year, and whenever something changes
              that could affect the hazards (9 CFR 417.4(a)(3)).
            </p>
          ) : (
            <p className={css.small}>
              Signed and frozen. Another version has taken its place; the lots that were started on this one keep to it.
            </p>
          )}
        </>
      ) : (
        <p>Nobody has signed version {version} yet: it binds nobody, and no lot can be started on it.</p>
      )}
      <p className={css.small}>
        Written by {recordedBy}, <Moment at={recordedAt} zone={zone} />.
      </p>
    </div>
  );
}
