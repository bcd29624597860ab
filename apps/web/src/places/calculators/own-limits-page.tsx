import { listLimitSets } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { Caution } from '../../ui/caution';
import { EmptyState } from '../../ui/empty-state';
import { LinkButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { Section } from '../../ui/section';
import { SelectField } from '../../ui/select-field';
import { Columns, Stack } from '../../ui/stack';
import { CalculatorsFrame } from './calculators-frame';
import { nameOfSet, type SetHead } from './limits/name-of-set';
import { OwnEditions } from './limits/own-editions';
import { SetDifferences } from './limits/set-differences';
import { SetRows } from './limits/set-rows';
import { useSay } from '../../ui/voice';

export function OwnLimitsPage() {
  const say = useSay('calculators');
  const { isOwner } = useShop();
  const { data, error, refetch } = useQuery(ask(listLimitSets, {}));
  const own = (data?.sets ?? []).filter((set) => set.own);
  const write = isOwner && (
    <LinkButton look="primary" to="/calculators/own-limits/new">
      {say('write-an-edition')}
    </LinkButton>
  );
  return (
    <CalculatorsFrame title={say('own-limits')} under={say('own-under')} actions={own.length > 0 && write}>
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      {data && own.length === 0 && (
        <EmptyState title={say('none-of-your-own')} action={write}>
          <p>{say('why-own')}</p>
          {!isOwner && <p>{say('owner-writes')}</p>}
        </EmptyState>
      )}
      {data && own.length > 0 && <Editions own={own} sets={data.sets} />}
    </CalculatorsFrame>
  );
}

function Editions({ own, sets }: { own: SetHead[]; sets: SetHead[] }) {
  const say = useSay('calculators');
  const [chosen, setChosen] = useState(own[0]?.setId ?? '');
  const [beside, setBeside] = useState('');
  const choices = (some: SetHead[]) => some.map((set) => ({ value: set.setId, name: nameOfSet(set, say) }));
  const others = [...own, ...sets.filter((set) => !set.own)].filter(({ setId }) => setId !== chosen);
  return (
    <Stack gap="wide">
      <OwnEditions own={own} />
      <Section title={say('what-they-hold')}>
        <Columns least={18}>
          <SelectField label={say('edition')} choices={choices(own)} value={chosen} onChange={setChosen} />
          <SelectField
            label={say('beside-it')}
            optional
            placeholder={say('nothing')}
            value={beside}
            onChange={setBeside}
            choices={[{ value: 'none', name: say('nothing') }, ...choices(others)]}
          />
        </Columns>
      </Section>
      <Caution>
        <p>{say('own-caution')}</p>
      </Caution>
      {beside && beside !== 'none' && beside !== chosen ? <SetDifferences here={chosen} there={beside} /> : <SetRows set={chosen} />}
    </Stack>
  );
}
