import { firstRun } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { Navigate } from '@tanstack/react-router';
import { ask } from '../../api/ask';
import { remembered } from '../../api/session';
import { LinkButton } from '../../ui/link-button';
import { PageHeader } from '../../ui/page-header';
import { Section } from '../../ui/section';
import { Row, Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';
import { OfferDemonstration } from './demonstration/offer-demonstration';
import { LanguageHere } from './language/language-here';
import { SignInForm } from './sign-in/sign-in-form';

/** Where nothing has been set up yet, nobody can sign in: the welcome opens. */
export function SignInPage() {
  const say = useSay('sign-in');
  const { data } = useQuery(ask(firstRun, {}));
  if (data && !data.hasShop && !data.hasDemonstration) return <Navigate to="/welcome" replace />;
  const before = remembered();
  return (
    <Stack gap="wide">
      <Stack>
        <PageHeader title={say('title')} over="Larderbook" under={before && !before.demonstration && before.establishment.name} />
        {data?.hasShop !== false && <SignInForm />}
        {data?.hasDemonstration && <OfferDemonstration isAlone={!data.hasShop} />}
      </Stack>
      {data?.hasShop === false && (
        <Section title={say('your-own-shop')}>
          <p>{say('not-set-up')}</p>
          <Row>
            <LinkButton to="/welcome" search={{ door: 'shop' }}>
              {say('set-up')}
            </LinkButton>
          </Row>
        </Section>
      )}
      <LanguageHere />
    </Stack>
  );
}
