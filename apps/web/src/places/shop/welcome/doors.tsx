import { LinkButton } from '../../../ui/link-button';
import { PageHeader } from '../../../ui/page-header';
import { Stack } from '../../../ui/stack';
import css from './doors.module.css';

type DoorsProps = { hasShop: boolean; hasDemonstration: boolean };

/** Two doors: one's own shop, or the demonstration. */
export function Doors({ hasShop, hasDemonstration }: DoorsProps) {
  return (
    <Stack>
      <PageHeader
        title="Larderbook"
        under="The record book of a small producer: every lot from received meat to shipped packages, judged as it is made, and on paper when it is asked for."
      />
      <div className={css.doors}>
        {hasShop ? (
          <Door
            title="Your shop is set up"
            words="Sign in with the user name and password you were given."
            action={
              <LinkButton look="primary" wide to="/sign-in">
                Sign in
              </LinkButton>
            }
          />
        ) : (
          <Door
            title="Set up my shop"
            words="Three short pages: the shop, its clock and units, and you as its owner. All of it can be changed later."
            action={
              <LinkButton look="primary" wide to="/welcome" search={{ door: 'shop' }}>
                Set up my shop
              </LinkButton>
            }
          />
        )}
        <Door
          title="Look round a demonstration"
          words="An invented shop with two months of deliveries, lots, misses and shipments. Nothing you do there is a record of yours."
          action={
            <LinkButton wide to="/welcome" search={{ door: 'demonstration' }}>
              {hasDemonstration ? 'Go into the demonstration' : 'Look round the demonstration'}
            </LinkButton>
          }
        />
      </div>
      {!hasShop && <p className={css.foot}>Both can be open side by side; the demonstration never mixes with your own records.</p>}
    </Stack>
  );
}

function Door({ title, words, action }: { title: string; words: string; action: React.ReactNode }) {
  return (
    <section className={css.door}>
      <h2>{title}</h2>
      <p>{words}</p>
      <div className={css.handle}>{action}</div>
    </section>
  );
}
