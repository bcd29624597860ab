import { useState } from 'react';
import { useShop } from '../../../api/use-shop';

import { Table } from '../../../ui/table';
import { wallTime } from '../../../ui/wall-time';
import { nameOfSet, type SetHead } from './name-of-set';
import { standingOf } from './own-standing';
import { useClock, useSay } from '../../../ui/voice';

export function OwnEditions({ own }: { own: SetHead[] }) {
  const say = useSay('calculators');
  const { zone } = useShop();
  const clock = useClock();
  const [today] = useState(() => wallTime(Date.now(), zone).slice(0, 10));
  return (
    <Table
      caption={say('editions')}
      captionUnseen
      rows={own}
      rowKey={({ setId }) => setId}
      columns={[
        { head: say('edition'), cell: (set) => nameOfSet(set, say) },
        { head: say('standing'), cell: (set) => standingOf(set, own, today, say) },
        { head: say('counts-from'), cell: ({ validFrom }) => clock.calendarDay(validFrom) },
        { head: say('figures'), cell: ({ rows }) => rows, figures: true },
        {
          head: say('written'),
          cell: ({ own: written }) =>
            written && say('written-by', { who: written.recordedBy, day: { at: written.recordedAt, show: 'day' } }),
        },
      ]}
    />
  );
}
