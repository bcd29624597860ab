import type { PlanContent } from '@larderbook/contracts';
import { Table } from '../../../ui/table';
import { hazardKindWords, likelyWords, type Hazard } from './plan-words';

type Row = Hazard & { step: string; key: string };

/** Every hazard of every step, whether it is likely, why, and what controls it (9 CFR 417.2(a)). */
export function HazardAnalysis({ content }: { content: PlanContent }) {
  const rows: Row[] = content.steps.flatMap(({ stepId, name, hazards }) =>
    hazards.map((hazard, i) => ({ ...hazard, step: name, key: `${stepId} ${i}` })),
  );
  return (
    <Table
      caption="Hazard analysis"
      captionUnseen
      rows={rows}
      rowKey={({ key }) => key}
      empty={<p>No hazard is named yet.</p>}
      columns={[
        { head: 'Step', cell: ({ step }) => step },
        {
          head: 'Hazard',
          cell: ({ kind, what }) => (
            <>
              {hazardKindWords[kind]}: {what}
            </>
          ),
        },
        { head: 'Likely?', cell: ({ likely }) => (likely ? <strong>{likelyWords(true)}</strong> : likelyWords(false)) },
        { head: 'Because', cell: ({ because }) => because || '–' },
        { head: 'Control', cell: ({ control }) => control || '–' },
      ]}
    />
  );
}
