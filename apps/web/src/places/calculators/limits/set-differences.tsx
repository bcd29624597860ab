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

/** What two sets print differently on the same matter, and what only one of them has. */
export function SetDifferences(asked: { here: string; there: string }) {
  const { data, error, refetch } = useQuery(ask(compareLimitSets, asked));
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  const [here, there] = [nameOfSet(data.here), nameOfSet(data.there)];
  const rows = data.differing.flatMap(({ rowId, title, differences }) =>
    differences.map((difference) => ({ ...difference, key: `${rowId} ${difference.what}`, title })),
  );
  return (
    <Stack gap="wide">
      <Section title="Printed differently">
        <Table
          caption={`${here} beside ${there}`}
          captionUnseen
          rows={rows}
          rowKey={({ key }) => key}
          empty={<p>What both have, both print alike.</p>}
          columns={[
            { head: 'About', cell: ({ title }) => title },
            { head: 'What', cell: ({ what }) => what },
            { head: here, cell: ({ here: said }) => said },
            { head: there, cell: ({ there: said }) => said },
          ]}
        />
      </Section>
      {data.notRead.length > 0 && <Only title="Not read in one of them yet" titles={data.notRead} />}
      <Only title={`Only in ${here}`} titles={data.onlyHere} />
      <Only title={`Only in ${there}`} titles={data.onlyThere} />
    </Stack>
  );
}

function Only({ title, titles }: { title: string; titles: string[] }) {
  return (
    <Section title={title} aside={`${titles.length}`}>
      {titles.length === 0 ? (
        <p>Nothing.</p>
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
