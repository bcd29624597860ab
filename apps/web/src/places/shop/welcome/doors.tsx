import { LinkButton } from '../../../ui/link-button';
import { PageHeader } from '../../../ui/page-header';
import { Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import css from './doors.module.css';

type DoorsProps = { hasShop: boolean };

export function Doors({ hasShop }: DoorsProps) {
  const say = useSay('welcome');
  return (
    <Stack>
      <PageHeader title="Larderbook" under={say('what-it-is')} />
      <div className={css.doors}>
        {hasShop ? (
          <Door
            title={say('is-set-up')}
            words={say('sign-in-with')}
            action={
              <LinkButton look="primary" wide to="/sign-in">
                {say('sign-in')}
              </LinkButton>
            }
          />
        ) : (
          <Door
            title={say('set-up')}
            words={say('three-pages')}
            action={
              <LinkButton look="primary" wide to="/welcome" search={{ door: 'shop' }}>
                {say('set-up')}
              </LinkButton>
            }
          />
        )}
        <Door
          title={say('look-round')}
          words={say('invented-shop')}
          action={
            <LinkButton wide to="/welcome" search={{ door: 'demonstration' }}>
              {say('open-demonstration')}
            </LinkButton>
          }
        />
      </div>
      {!hasShop && <p className={css.foot}>{say('never-mixes')}</p>}
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
