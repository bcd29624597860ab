import type { FieldErrors } from '../../../api/check';
import { Caution } from '../../../ui/caution';
import { Facts } from '../../../ui/facts';
import { Question } from '../../../ui/question';
import { Stack } from '../../../ui/stack';
import { HabitsFields } from '../establishment/habits-fields';
import { paperWords, unitsWords } from '../establishment/say-habits';
import { sayWhere } from '../establishment/say-where';
import { ShopFields } from '../establishment/shop-fields';
import { WhereFields } from '../establishment/where-fields';
import { AccountFields } from '../persons/account-fields';
import type { SetUpDraft } from './set-up-draft';

type StepProps<T> = { value: T; errors: FieldErrors; onChange: (value: T) => void };

export const ShopQuestion = (props: StepProps<SetUpDraft['establishment']>) => (
  <Question title="What is your shop called?" hint="As it stands on your labels. It is printed at the head of every record.">
    <Stack>
      <ShopFields {...props} />
      <WhereFields {...props} />
    </Stack>
  </Question>
);

export const HabitsQuestion = (props: StepProps<SetUpDraft['establishment']>) => (
  <Question
    title="By which clock and in which units do you work?"
    hint="Guessed from this device. Any thermometer and scale can be used all the same: a value is kept in the unit it was read in."
  >
    <HabitsFields {...props} />
  </Question>
);

export const OwnerQuestion = (props: StepProps<SetUpDraft['owner']>) => (
  <Question
    title="Who are you?"
    hint="You are the owner: you make accounts for the others, and write products and plans. Your name stands under what you record and sign."
  >
    <AccountFields isMine {...props} />
  </Question>
);

export function LookOver({ draft: { establishment, owner } }: { draft: SetUpDraft }) {
  return (
    <Question
      title="Is this right?"
      hint="The shop’s details can be changed later; what was recorded before keeps what it was recorded under."
    >
      <Facts
        facts={[
          { name: 'Establishment', value: establishment.name },
          { name: 'Number', value: establishment.number || 'none yet' },
          { name: 'Address', value: establishment.address || 'none yet' },
          {
            name: 'Published limits that count',
            value: establishment.jurisdiction ? sayWhere(establishment) : 'not said yet',
          },
          { name: 'Time zone', value: establishment.timeZone.replaceAll('_', ' ') },
          { name: 'Units', value: unitsWords[establishment.units] },
          { name: 'Paper', value: paperWords[establishment.paper] },
          { name: 'Owner', value: owner.name },
          { name: 'User name', value: owner.userName.trim().toLowerCase() },
        ]}
      />
      <Caution>
        Larderbook keeps records and computes; it does not validate a process. The limits it offers are references: your plan must be
        validated, and local codes, your inspector and a licensed process authority decide. Curing salts are toxic in excess.
      </Caution>
    </Question>
  );
}
