import { listLimitSets } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { Caution } from '../../ui/caution';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { SelectField } from '../../ui/select-field';
import { Columns, Stack } from '../../ui/stack';
import { CalculatorsFrame } from './calculators-frame';
import { nameOfSet, type SetHead } from './limits/name-of-set';
import { SetDifferences } from './limits/set-differences';
import { SetRows } from './limits/set-rows';

/** What is published, jurisdiction by jurisdiction and edition by edition, and how two of them differ. */
export function LimitsPage() {
  const { data, error, refetch } = useQuery(ask(listLimitSets, {}));
  const [chosen, setChosen] = useState('');
  const [beside, setBeside] = useState('');
  if (!data) {
    return (
      <CalculatorsFrame title="Published limits">
        {error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />}
      </CalculatorsFrame>
    );
  }
  const { sets } = data;
  const set = chosen || (sets[0]?.setId ?? '');
  const choices = sets.map((each) => ({ value: each.setId, name: `${nameOfSet(each)}${besides(each)}` }));
  return (
    <CalculatorsFrame title="Published limits" under="Each figure as its source prints it.">
      <Stack gap="wide">
        <Columns least={26}>
          <SelectField label="Set" choices={choices} value={set} onChange={setChosen} />
          <SelectField
            label="Beside it"
            optional
            placeholder="Nothing"
            value={beside}
            onChange={setBeside}
            choices={[{ value: 'none', name: 'Nothing' }, ...choices.filter(({ value }) => value !== set)]}
          />
        </Columns>
        <Caution>
          <p>
            A published limit is a reference. Your plan must be validated; local codes, the inspector and a licensed process authority
            decide. A figure marked “not confirmed” was not read in its source.
          </p>
        </Caution>
        {beside && beside !== 'none' && beside !== set ? <SetDifferences here={set} there={beside} /> : <SetRows set={set} />}
      </Stack>
    </CalculatorsFrame>
  );
}

const besides = ({ own, usual }: SetHead): string => (own ? ' (your own)' : usual ? '' : ' (another edition)');
