import { listLimitSets } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import { Problem } from '../../../ui/problem';
import { SelectField } from '../../../ui/select-field';
import { useSay } from '../../../ui/voice';
import { editionsOf, titleOf } from './editions';
import type { Where } from './where-fields';

type EditionFieldProps = { value: Where; error: string | undefined; onChange: (limitSet: string | undefined) => void };

const usual = 'usual';

/** Where a jurisdiction has more than one: of the Food Code, the one the state has adopted. */
export function EditionField({ value: { jurisdiction, limitSet }, error, onChange }: EditionFieldProps) {
  const say = useSay('shop');
  const { data, error: failed, refetch } = useQuery({ ...ask(listLimitSets, {}), enabled: jurisdiction !== undefined });
  if (jurisdiction === undefined) return null;
  if (failed && !data) return <Problem error={failed} onRetry={() => void refetch()} />;
  const editions = editionsOf(data?.sets ?? [], jurisdiction);
  const first = editions.find((set) => set.usual);
  if (editions.length < 2 || !first) return null;
  const choices = editions.map((set) => ({ value: set.setId, name: titleOf(set) }));
  return (
    <SelectField
      label={say('edition')}
      choices={[{ value: usual, name: say('usual-edition', { edition: titleOf(first) }) }, ...choices]}
      hint={say('edition-hint')}
      value={limitSet ?? usual}
      error={error}
      onChange={(chosen) => onChange(chosen === usual ? undefined : chosen)}
    />
  );
}
