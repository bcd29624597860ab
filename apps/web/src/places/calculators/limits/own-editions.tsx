import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { dateWords, Moment } from '../../../ui/moment';
import { Table } from '../../../ui/table';
import { wallTime } from '../../../ui/wall-time';
import { nameOfSet, type SetHead } from './name-of-set';
import { standingOf } from './own-standing';

/** Every edition of the shop's own limits, the latest first: from when it counts, who wrote it, how it stands. */
export function OwnEditions({ own }: { own: SetHead[] }) {
  const { zone } = useShop();
  const [today] = useState(() => wallTime(Date.now(), zone).slice(0, 10));
  return (
    <Table
      caption="Editions"
      captionUnseen
      rows={own}
      rowKey={({ setId }) => setId}
      columns={[
        { head: 'Edition', cell: nameOfSet },
        { head: 'Standing', cell: (set) => standingOf(set, own, today) },
        { head: 'Counts from', cell: ({ validFrom }) => dateWords(validFrom) },
        { head: 'Figures', cell: ({ rows }) => rows, figures: true },
        {
          head: 'Written',
          cell: ({ own: written }) =>
            written && (
              <>
                {written.recordedBy}, <Moment at={written.recordedAt} zone={zone} show="day" />
              </>
            ),
        },
      ]}
    />
  );
}
