import { listPeople } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { AddPerson } from './persons/add-person';
import { ChangePerson } from './persons/change-person';
import { OnlyOwners } from './persons/only-owners';
import { OwnPassword } from './persons/own-password';
import { PersonTable, type Person } from './persons/person-table';
import { ShopFrame } from './shop-frame';

type Doing = { what: 'add' } | { what: 'own password' } | { what: 'change'; person: Person };

/** Everyone with an account and what each may do; the owner makes accounts, anyone changes their own password. */
export function PeoplePage() {
  const { isOwner } = useShop();
  const { data, error, refetch } = useQuery(ask(listPeople, {}));
  const [doing, setDoing] = useState<Doing>();
  const close = () => setDoing(undefined);
  return (
    <ShopFrame
      title="People"
      actions={
        <>
          <Button onClick={() => setDoing({ what: 'own password' })}>Change my password</Button>
          {isOwner && (
            <Button look="primary" onClick={() => setDoing({ what: 'add' })}>
              Add a person
            </Button>
          )}
        </>
      }
    >
      {data && <PersonTable people={data.people} onChange={isOwner ? (person) => setDoing({ what: 'change', person }) : undefined} />}
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      <OnlyOwners may="add a person or change what somebody may do" />
      {doing?.what === 'add' && <AddPerson onClose={close} />}
      {doing?.what === 'own password' && <OwnPassword onClose={close} />}
      {doing?.what === 'change' && <ChangePerson person={doing.person} onClose={close} />}
    </ShopFrame>
  );
}
