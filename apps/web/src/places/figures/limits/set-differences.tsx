import { compareLimitSets } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import { Loading } from '../../../ui/loading';
import { Problem } from '../../../ui/problem';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Table } from '../../../ui/table';
import css from './limits.module.css';

/** What two sets print differently on the same matter, and what only one of them has. */
export function SetDifferences({ here, there }: { here: string; there: string }) {
  const { data, error, refetch } = useQuery(ask(compareLimitSets, { here, there }));
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading what="the differences" />;
  const rows = data.differing.flatMap(({ rowId, title, differences }) =>
    differences.map((difference) => ({ ...difference, key: `${rowId} ${difference.what}`, title })),
  );
  return (
    <Stack gap="wide">
      <Section title="Printed differently">
        <Table
          caption={`${data.here.title} beside ${data.there.title}`} captionUnseen rows={rows} rowKey={({ key }) => key}
          empty={<p>What both have, both print alike.</p>}
          columns={[
            { head: 'About', cell: ({ title }) => title },
            { head: 'What', cell: ({ what }) => what },
            { head: `${data.here.title}`, cell: ({ here: said }) => said },
            { head: `${data.there.title}`, cell: ({ there: said }) => said },
          ]}
        />
      </Section>
      {data.notRead.length > 0 && <Only title="Not read in one of them yet" titles={data.notRead} />}
      <Only title={`Only in ${data.here.title}`} titles={data.onlyHere} />
      <Only title={`Only in ${data.there.title}`} titles={data.onlyThere} />
    </Stack>
  );
}

function Only({ title, titles }: { title: string; titles: string[] }) {
  return (
    <Section title={title} aside={`${titles.length}`}>
      {titles.length === 0 ? <p>Nothing.</p> : <ul className={css.only}>{titles.map((one, index) => <li key={index}>{one}</li>)}</ul>}
    </Section>
  );
}
