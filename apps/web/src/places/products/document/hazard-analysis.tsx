import type { PlanContent } from '@larderbook/contracts';
import { Table } from '../../../ui/table';
import type { Hazard } from './plan-words';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../ui/voice';

type Row = Hazard & { step: string; key: string };

/** 9 CFR 417.2(a). */
export function HazardAnalysis({ content }: { content: PlanContent }) {
  const say = useSay('plans');
  const rows: Row[] = content.steps.flatMap(({ stepId, name, hazards }) =>
    hazards.map((hazard, i) => ({ ...hazard, step: name, key: `${stepId} ${i}` })),
  );
  return (
    <Table
      caption={say('hazard-analysis')}
      captionUnseen
      rows={rows}
      rowKey={({ key }) => key}
      empty={<p>{say('no-hazard-yet')}</p>}
      columns={[
        { head: say('step'), cell: ({ step }) => step },
        {
          head: say('hazard'),
          cell: ({ kind, what }) => say('hazard-named', { kind: say(codeOf('hazard', kind)), what }),
        },
        { head: say('likely-head'), cell: ({ likely }) => (likely ? <strong>{say('likely')}</strong> : say('not-likely')) },
        { head: say('because'), cell: ({ because }) => because || '–' },
        { head: say('control'), cell: ({ control }) => control || '–' },
      ]}
    />
  );
}
