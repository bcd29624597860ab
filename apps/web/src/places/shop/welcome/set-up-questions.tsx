import { codeOf } from '@larderbook/messages';
import type { FieldErrors } from '../../../api/check';
import { Caution } from '../../../ui/caution';
import { Facts } from '../../../ui/facts';
import { Question } from '../../../ui/question';
import { Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import { HabitsFields } from '../establishment/habits-fields';
import { ShopFields } from '../establishment/shop-fields';
import { whereOf } from '../establishment/where';
import { WhereFields } from '../establishment/where-fields';
import { AccountFields } from '../persons/account-fields';
import type { SetUpDraft } from './set-up-draft';

type StepProps<T> = { value: T; errors: FieldErrors; onChange: (value: T) => void };

export function ShopQuestion(props: StepProps<SetUpDraft['establishment']>) {
  const say = useSay('welcome');
  return (
    <Question title={say('shop-question')} hint={say('shop-hint')}>
      <Stack>
        <ShopFields {...props} />
        <WhereFields {...props} />
      </Stack>
    </Question>
  );
}

export function HabitsQuestion(props: StepProps<SetUpDraft['establishment']>) {
  const say = useSay('welcome');
  return (
    <Question title={say('habits-question')} hint={say('habits-hint')}>
      <HabitsFields {...props} />
    </Question>
  );
}

export function OwnerQuestion(props: StepProps<SetUpDraft['owner']>) {
  const say = useSay('welcome');
  return (
    <Question title={say('owner-question')} hint={say('owner-hint')}>
      <AccountFields isMine {...props} />
    </Question>
  );
}

export function LookOver({ draft: { establishment, owner } }: { draft: SetUpDraft }) {
  const say = useSay('welcome');
  const sayShop = useSay('shop');
  const sayPeople = useSay('people');
  return (
    <Question title={say('right-question')} hint={say('right-hint')}>
      <Facts
        facts={[
          { name: sayShop('establishment'), value: establishment.name },
          { name: sayShop('number'), value: establishment.number || sayShop('none') },
          { name: sayShop('address'), value: establishment.address || sayShop('none') },
          { name: sayShop('whose-limits'), value: establishment.jurisdiction ? whereOf(establishment) : sayShop('none-assumed') },
          { name: sayShop('time-zone'), value: establishment.timeZone.replaceAll('_', ' ') },
          { name: sayShop('units'), value: sayShop(codeOf('units', establishment.units)) },
          { name: sayShop('paper'), value: sayShop(codeOf('paper', establishment.paper)) },
          { name: say('owner'), value: owner.name },
          { name: sayPeople('user-name'), value: owner.userName.trim().toLowerCase() },
        ]}
      />
      <Caution>{say('computes-only')}</Caution>
    </Question>
  );
}
