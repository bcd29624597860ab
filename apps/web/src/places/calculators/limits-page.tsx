import { listLimitSets } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { Caution } from '../../ui/caution';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { FindField } from '../../ui/find-field';
import { Columns, Stack } from '../../ui/stack';
import { CalculatorsFrame } from './calculators-frame';
import { nameOfSet, type SetHead } from './limits/name-of-set';
import { SetDifferences } from './limits/set-differences';
import { SetRows } from './limits/set-rows';
import { useSay } from '../../ui/voice';
import type { SayOf } from '@larderbook/messages';

export function LimitsPage() {
  const say = useSay('calculators');
  const { data, error, refetch } = useQuery(ask(listLimitSets, {}));
  const [chosen, setChosen] = useState('');
  const [beside, setBeside] = useState('');
  if (!data) {
    return (
      <CalculatorsFrame title={say('published-limits')}>
        {error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />}
      </CalculatorsFrame>
    );
  }
  const { sets } = data;
  const set = chosen || (sets[0]?.setId ?? '');
  const choices = sets.map((each) => ({ value: each.setId, name: besides(each, say) }));
  return (
    <CalculatorsFrame title={say('published-limits')} under={say('as-printed')}>
      <Stack gap="wide">
        <Columns least={26}>
          <FindField label={say('set')} choices={choices} value={set} onChange={setChosen} />
          <FindField
            label={say('beside-it')}
            optional
            placeholder={say('nothing')}
            value={beside}
            onChange={setBeside}
            choices={[{ value: 'none', name: say('nothing') }, ...choices.filter(({ value }) => value !== set)]}
          />
        </Columns>
        <Caution>
          <p>{say('limits-caution')}</p>
        </Caution>
        {beside && beside !== 'none' && beside !== set ? <SetDifferences here={set} there={beside} /> : <SetRows set={set} />}
      </Stack>
    </CalculatorsFrame>
  );
}

function besides(each: SetHead, say: SayOf<'calculators'>): string {
  const set = nameOfSet(each, say);
  return each.own ? say('own-set', { set }) : each.usual ? set : say('another-edition', { set });
}
