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

/** The shop's own limits in their editions: what each holds, which plans use it, how it differs from another set. */
export function OwnLimitsPage() {
  const { isOwner } = useShop();
  const { data, error, refetch } = useQuery(ask(listLimitSets, {}));
  const own = (data?.sets ?? []).filter((set) => set.own);
  const write = isOwner && (
    <LinkButton look="primary" to="/calculators/own-limits/new">
      Write an edition
    </LinkButton>
  );
  return (
    <CalculatorsFrame
      title="Own limits"
      under="Figures of this establishment, with their support on file."
      actions={own.length > 0 && write}
    >
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      {data && own.length === 0 && (
        <EmptyState title="No limits of your own yet" action={write}>
          <p>
            Where a published figure does not fit your process and you have the support for another, write it here with its source. It can
            then be chosen in your plans, and a later edition says which of them to reassess.
          </p>
          {!isOwner && <p>Own limits are written by the owner.</p>}
        </EmptyState>
      )}
      {data && own.length > 0 && <Editions own={own} sets={data.sets} />}
    </CalculatorsFrame>
  );
}

function Editions({ own, sets }: { own: SetHead[]; sets: SetHead[] }) {
  const [chosen, setChosen] = useState(own[0]?.setId ?? '');
  const [beside, setBeside] = useState('');
  const choices = (some: SetHead[]) => some.map((set) => ({ value: set.setId, name: nameOfSet(set) }));
  const others = [...own, ...sets.filter((set) => !set.own)].filter(({ setId }) => setId !== chosen);
  return (
    <Stack gap="wide">
      <OwnEditions own={own} />
      <Section title="What they hold">
        <Columns least={18}>
          <SelectField label="Edition" choices={choices(own)} value={chosen} onChange={setChosen} />
          <SelectField
            label="Beside it"
            optional
            placeholder="Nothing"
            value={beside}
            onChange={setBeside}
            choices={[{ value: 'none', name: 'Nothing' }, ...choices(others)]}
          />
        </Columns>
      </Section>
      <Caution>
        <p>
          A limit of your own needs its support on file and a validated process. An edition never changes a plan that is adopted: plans
          built on an earlier one say why to reassess them.
        </p>
      </Caution>
      {beside && beside !== 'none' && beside !== chosen ? <SetDifferences here={chosen} there={beside} /> : <SetRows set={chosen} />}
    </Stack>
  );
}
