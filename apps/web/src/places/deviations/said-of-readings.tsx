import { clarificationsOf, showLot, type Deviation } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { LinkButton } from '../../ui/link-button';
import { SaidTable } from '../../ui/said-table';
import { Section } from '../../ui/section';
import { useFigures, useSay } from '../../ui/voice';

export function SaidOfReadings({ deviation: { lot, controlPoint } }: { deviation: Deviation }) {
  const say = useSay('deviations');
  const figures = useFigures();
  const { zone } = useShop();
  const lotId = lot?.lotId ?? '';
  const { data } = useQuery({ ...ask(showLot, { lotId }), enabled: lot !== undefined && controlPoint !== undefined });
  const point = data?.controlPoints.find((one) => one.controlPoint.controlPointId === controlPoint?.controlPointId);
  const said = clarificationsOf(point?.readings ?? []);
  if (!point || said.length === 0) return null;
  return (
    <Section
      title={say('said-of-readings')}
      aside={
        <LinkButton to="/lots/$lotId/explanations/$controlPointId" params={{ lotId, controlPointId: point.controlPoint.controlPointId }}>
          {say('how-judged')}
        </LinkButton>
      }
    >
      <SaidTable
        said={said}
        sayReadings={({ readings }) => readings.map(({ entered }) => ('unit' in entered ? figures.quantity(entered) : '')).join(', ')}
        zone={zone}
      />
    </Section>
  );
}
