import { firstRun } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { Navigate } from '@tanstack/react-router';
import { ask } from '../../api/ask';
import { remembered } from '../../api/session';
import { LinkButton } from '../../ui/link-button';
import { PageHeader } from '../../ui/page-header';
import { Section } from '../../ui/section';
import { Row, Stack } from '../../ui/stack';
import { OfferDemonstration } from './demonstration/offer-demonstration';
import { SignInForm } from './sign-in/sign-in-form';

/** Signing in. Where nothing has been set up yet there is nobody to sign in: that is the welcome. */
export function SignInPage() {
  const { data } = useQuery(ask(firstRun, {}));
  if (data && !data.hasShop && !data.hasDemonstration) return <Navigate to="/welcome" replace />;
  const before = remembered();
  return (
    <Stack gap="wide">
      <Stack>
        <PageHeader title="Sign in" over="Larderbook" under={before && !before.demonstration && before.establishment.name} />
        {data?.hasShop !== false && <SignInForm />}
        {data?.hasDemonstration && <OfferDemonstration isAlone={!data.hasShop} />}
      </Stack>
      {data?.hasShop === false && (
        <Section title="Your own shop">
          <p>It is not set up yet.</p>
          <Row><LinkButton to="/welcome" search={{ door: 'shop' }}>Set up my shop</LinkButton></Row>
        </Section>
      )}
    </Stack>
  );
}
