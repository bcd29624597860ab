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
import { useSay } from '../../../ui/voice';

type BeginEditionProps = { today: string; onBegin: (draft: OwnDraft) => void };

/** An edition begun from the last one of a set replaces it. */
export function BeginEdition({ today, onBegin }: BeginEditionProps) {
  const say = useSay('own-limits');
  const { data, error, refetch } = useQuery(ask(listLimitSets, {}));
  const latest = (data?.sets ?? []).filter(({ own }) => own && !own.replacedBy);
  const beginAfter = async (set: (typeof latest)[number]) => {
    try {
      const { rows } = await call(rowsToTake, { set: set.setId });
      onBegin(draftAfter(set, rows, today));
    } catch {
      announce(say('not-fetched'), { urgent: true });
    }
  };
  return (
    <Stack gap="wide">
      {error && !data && <Problem error={error} onRetry={() => void refetch()} />}
      {!data && !error && <Loading />}
      {latest.length > 0 && (
        <Section title={say('next-edition')}>
          <Tiles
            label={say('your-sets')}
            tiles={latest.map((set) => ({
              key: set.setId,
              title: set.title,
              onTap: () => void beginAfter(set),
              lines: [say('after-edition', { edition: set.edition }), say('figures-count', { count: set.rows })],
            }))}
          />
        </Section>
      )}
      <Section title={say(latest.length > 0 ? 'another-set' : 'first-set')}>
        <Tiles
          label={say('another-set')}
          tiles={[
            {
              key: 'empty',
              title: say('start-a-set'),
              onTap: () => onBegin(emptyDraft(today)),
              lines: [say('own-or-taken')],
            },
          ]}
        />
      </Section>
    </Stack>
  );
}
