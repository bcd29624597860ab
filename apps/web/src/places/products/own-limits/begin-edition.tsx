import { listLimitSets, rowsToTake } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import { call } from '../../../api/client';
import { announce } from '../../../ui/announcer';
import { Loading } from '../../../ui/loading';
import { Problem } from '../../../ui/problem';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Tiles } from '../../../ui/tiles';
import { draftAfter, emptyDraft, type OwnDraft } from './own-draft';

type BeginEditionProps = { today: string; onBegin: (draft: OwnDraft) => void };

/** What an edition begins from: the last one of a set, which it then replaces, or nothing. */
export function BeginEdition({ today, onBegin }: BeginEditionProps) {
  const { data, error, refetch } = useQuery(ask(listLimitSets, {}));
  const latest = (data?.sets ?? []).filter(({ own }) => own && !own.replacedBy);
  const beginAfter = async (set: (typeof latest)[number]) => {
    try {
      const { rows } = await call(rowsToTake, { set: set.setId });
      onBegin(draftAfter(set, rows, today));
    } catch {
      announce('The edition could not be fetched. Try again when there is a connection.', { urgent: true });
    }
  };
  return (
    <Stack gap="wide">
      {error && !data && <Problem error={error} onRetry={() => void refetch()} />}
      {!data && !error && <Loading />}
      {latest.length > 0 && (
        <Section title="The next edition of a set">
          <Tiles
            label="Your sets"
            tiles={latest.map((set) => ({
              key: set.setId,
              title: set.title,
              onTap: () => void beginAfter(set),
              lines: [`After edition ${set.edition}`, set.rows === 1 ? '1 figure' : `${set.rows} figures`],
            }))}
          />
        </Section>
      )}
      <Section title={latest.length > 0 ? 'Another set' : 'Your first set'}>
        <Tiles
          label="Another set"
          tiles={[
            {
              key: 'empty',
              title: 'Start a set',
              onTap: () => onBegin(emptyDraft(today)),
              lines: ['Your own figures, or figures taken from a published set.'],
            },
          ]}
        />
      </Section>
    </Stack>
  );
}
