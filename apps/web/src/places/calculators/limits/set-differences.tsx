import { compareLimitSets } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import { Loading } from '../../../ui/loading';
import { Problem } from '../../../ui/problem';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Table } from '../../../ui/table';
import css from './limits.module.css';
import { nameOfSet } from './name-of-set';
import { useSay } from '../../../ui/voice';

export function SetDifferences(asked: { here: string; there: string }) {
  const say = useSay('calculators');
  const { data, error, refetch } = useQuery(ask(compareLimitSets, asked));
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  const [here, there] = [nameOfSet(data.here, say), nameOfSet(data.there, say)];
  const rows = data.differing.flatMap(({ rowId, title, differences }) =>
    differences.map((difference) => ({ ...difference, key: `${rowId} ${difference.what}`, title })),
  );
  return (
    <Stack gap="wide">
      <Section title={say('printed-differently')}>
        <Table
          caption={say('one-beside-other', { here, there })}
          captionUnseen
          rows={rows}
          rowKey={({ key }) => key}
          empty={<p>{say('both-alike')}</p>}
          columns={[
            { head: say('about'), cell: ({ title }) => title },
            { head: say('what'), cell: ({ what }) => what },
            { head: here, cell: ({ here: said }) => said },
            { head: there, cell: ({ there: said }) => said },
          ]}
        />
      </Section>
      {data.notRead.length > 0 && <Only title={say('not-read')} titles={data.notRead} />}
      <Only title={say('only-in', { set: here })} titles={data.onlyHere} />
      <Only title={say('only-in', { set: there })} titles={data.onlyThere} />
    </Stack>
  );
}

function Only({ title, titles }: { title: string; titles: string[] }) {
  const say = useSay('calculators');
  return (
    <Section title={title} aside={`${titles.length}`}>
      {titles.length === 0 ? (
        <p>{say('none')}</p>
      ) : (
        <ul className={css.only}>
          {titles.map((one, index) => (
            <li key={index}>{one}</li>
          ))}
        </ul>
      )}
    </Section>
  );
}
