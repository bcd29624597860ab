import { listPeople } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { useSay } from '../../ui/voice';
import { OwnLanguage } from './language/own-language';
import { AddPerson } from './persons/add-person';
import { ChangePerson } from './persons/change-person';
import { OnlyOwners } from './persons/only-owners';
import { OwnPassword } from './persons/own-password';
import { PersonTable, type Person } from './persons/person-table';
import { ShopFrame } from './shop-frame';

type Open = { what: 'add' } | { what: 'own password' } | { what: 'change'; person: Person };

export function PeoplePage() {
  const say = useSay('people');
  const { isOwner } = useShop();
  const { data, error, refetch } = useQuery(ask(listPeople, {}));
  const [open, setOpen] = useState<Open>();
  const close = () => setOpen(undefined);
  return (
    <ShopFrame
      title="people"
      actions={
        <>
          <Button onClick={() => setOpen({ what: 'own password' })}>{say('change-my-password')}</Button>
          {isOwner && (
            <Button look="primary" onClick={() => setOpen({ what: 'add' })}>
              {say('add')}
            </Button>
          )}
        </>
      }
    >
      {data && <PersonTable people={data.people} onChange={isOwner ? (person) => setOpen({ what: 'change', person }) : undefined} />}
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      <OwnLanguage />
      <OnlyOwners may="add" />
      {open?.what === 'add' && <AddPerson onClose={close} />}
      {open?.what === 'own password' && <OwnPassword onClose={close} />}
      {open?.what === 'change' && <ChangePerson person={open.person} onClose={close} />}
    </ShopFrame>
  );
}
