import type { ledgerHead, ReplyOf } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { useShop } from '../../../api/use-shop';
import { Moment } from '../../../ui/moment';
import { Table } from '../../../ui/table';
import { useSay } from '../../../ui/voice';
import css from './ledger.module.css';
import { kindOf } from './record-kinds';

export function LatestEntries({ entries }: { entries: ReplyOf<typeof ledgerHead>['latest'] }) {
  const say = useSay('shop');
  const { zone } = useShop();
  return (
    <Table
      caption={say('latest')}
      rows={entries}
      rowKey={({ seq }) => String(seq)}
      columns={[
        { head: say('line'), cell: ({ seq }) => seq, figures: true },
        {
          head: say('when'),
          cell: ({ at, ranBack }) => (
            <>
              <Moment at={at} zone={zone} />
              {ranBack && <span className={css.ranBack}>{say('ran-back')}</span>}
            </>
          ),
          oneLine: true,
        },
        { head: say('who'), cell: ({ person }) => person },
        { head: say('what'), cell: ({ kind }) => say(codeOf('entry', kindOf(kind))) },
        {
          head: say('hash'),
          cell: ({ hash }) => (
            <code title={hash} className={css.hash}>
              {hash.slice(0, 12)}…
            </code>
          ),
          oneLine: true,
        },
      ]}
    />
  );
}
