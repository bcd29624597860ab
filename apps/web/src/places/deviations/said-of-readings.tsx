import { clarificationsOf, showLot, type Deviation } from '@larderbook/contracts';
import { sayRead } from '@larderbook/haccp';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { LinkButton } from '../../ui/link-button';
import { Moment } from '../../ui/moment';
import { Section } from '../../ui/section';
import { Table } from '../../ui/table';

/** What people said of the readings at the control point a deviation is about: who, when, why. */
export function SaidOfReadings({ deviation: { lot, controlPoint } }: { deviation: Deviation }) {
  const { zone } = useShop();
  const lotId = lot?.lotId ?? '';
  const { data } = useQuery({ ...ask(showLot, { lotId }), enabled: lot !== undefined && controlPoint !== undefined });
  const point = data?.controlPoints.find((one) => one.controlPoint.controlPointId === controlPoint?.controlPointId);
  const said = clarificationsOf(point?.readings ?? []);
  if (!point || said.length === 0) return null;
  return (
    <Section
      title="What was said of the readings"
      aside={
        <LinkButton
          to="/lots/$lotId/explanations/$controlPointId"
          params={{ lotId, controlPointId: point.controlPoint.controlPointId }}
        >
          How it was judged
        </LinkButton>
      }
    >
      <Table
        caption="What was said of the readings"
        captionUnseen
        rows={said}
        rowKey={({ clarificationId }) => clarificationId}
        columns={[
          {
            head: 'Readings',
            cell: ({ readings }) => readings.map(({ entered }) => ('unit' in entered ? sayRead(entered) : '')).join(', '),
          },
          { head: 'Said to be', cell: ({ word }) => <strong>{word}</strong> },
          { head: 'Why', cell: ({ reason }) => reason },
          {
            head: 'Who, when',
            cell: ({ made }) => (
              <>
                {made.name}, <Moment at={made.recordedAt} zone={zone} />
              </>
            ),
          },
        ]}
      />
    </Section>
  );
}
