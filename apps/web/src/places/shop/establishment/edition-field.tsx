import { listLimitSets } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import { Problem } from '../../../ui/problem';
import { SelectField } from '../../../ui/select-field';
import { editionsOf, sayEdition } from './editions';
import type { Where } from './where-fields';

type EditionFieldProps = { value: Where; error: string | undefined; onChange: (limitSet: string | undefined) => void };

const usual = 'the usual one';

/** Which edition counts, where the jurisdiction has more than one: of the Food Code, the one the state has adopted. */
export function EditionField({ value: { jurisdiction, limitSet }, error, onChange }: EditionFieldProps) {
  const { data, error: failed, refetch } = useQuery({ ...ask(listLimitSets, {}), enabled: jurisdiction !== undefined });
  if (jurisdiction === undefined) return null;
  if (failed && !data) return <Problem error={failed} onRetry={() => void refetch()} />;
  const editions = editionsOf(data?.sets ?? [], jurisdiction);
  const first = editions.find((set) => set.usual);
  if (editions.length < 2 || !first) return null;
  const choices = editions.map((set) => ({ value: set.setId, name: sayEdition(set) }));
  return (
    <SelectField
      label="Edition in use"
      choices={[{ value: usual, name: `The usual one: ${sayEdition(first)}` }, ...choices]}
      hint="The one your authority has adopted. Adopted plans stay as they are; each says what to reassess."
      value={limitSet ?? usual}
      error={error}
      onChange={(chosen) => onChange(chosen === usual ? undefined : chosen)}
    />
  );
}
