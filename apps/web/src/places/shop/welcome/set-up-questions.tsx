import { codeOf } from '@larderbook/messages';
import type { FieldErrors } from '../../../api/check';
import { Caution } from '../../../ui/caution';
import { Facts } from '../../../ui/facts';
import { Question } from '../../../ui/question';
import { Stack } from '../../../ui/stack';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';
import { HabitsFields } from '../establishment/habits-fields';
import { ShopFields } from '../establishment/shop-fields';
import { WhereFields } from '../establishment/where-fields';
import { AccountFields } from '../persons/account-fields';
import type { SetUpDraft, SetUpStep } from './set-up-draft';

type SetUpQuestionProps = { step: SetUpStep; draft: SetUpDraft; errors: FieldErrors; onChange: (draft: SetUpDraft) => void };

export function SetUpQuestion({ step, draft, errors, onChange }: SetUpQuestionProps) {
  const ofShop = (establishment: SetUpDraft['establishment']) => onChange({ ...draft, establishment });
  if (step === 'shop') return <ShopQuestion value={draft.establishment} errors={errors} onChange={ofShop} />;
  if (step === 'habits') return <HabitsQuestion value={draft.establishment} errors={errors} onChange={ofShop} />;
  if (step === 'owner') return <OwnerQuestion value={draft.owner} errors={errors} onChange={(owner) => onChange({ ...draft, owner })} />;
  return <LookOver draft={draft} />;
}

type StepProps<T> = { value: T; errors: FieldErrors; onChange: (value: T) => void };

function ShopQuestion(props: StepProps<SetUpDraft['establishment']>) {
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

function HabitsQuestion(props: StepProps<SetUpDraft['establishment']>) {
  const say = useSay('welcome');
  return (
    <Question title={say('habits-question')} hint={say('habits-hint')}>
      <HabitsFields {...props} />
    </Question>
  );
}

function OwnerQuestion(props: StepProps<SetUpDraft['owner']>) {
  const say = useSay('welcome');
  return (
    <Question title={say('owner-question')} hint={say('owner-hint')}>
      <AccountFields isMine {...props} />
    </Question>
  );
}

function LookOver({ draft: { establishment, owner } }: { draft: SetUpDraft }) {
  const say = useSay('welcome');
  const { sayWhere } = useLimits();
  const sayShop = useSay('shop');
  const sayPeople = useSay('people');
  return (
    <Question title={say('right-question')} hint={say('right-hint')}>
      <Facts
        facts={[
          { name: sayShop('establishment'), value: establishment.name },
          { name: sayShop('number'), value: establishment.number || sayShop('none') },
          { name: sayShop('address'), value: establishment.address || sayShop('none') },
          { name: sayShop('whose-limits'), value: establishment.jurisdiction ? sayWhere(establishment) : sayShop('none-assumed') },
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
