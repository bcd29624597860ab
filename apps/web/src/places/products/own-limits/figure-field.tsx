import { kindsTakenAs, type CriticalLimit } from '@larderbook/haccp';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { FaultWords } from '../../../ui/fault-words';
import { Row, Stack } from '../../../ui/stack';
import { LimitView } from '../document/limit-view';
import drafting from '../drafting/drafting.module.css';
import { LimitDialog } from '../limits/limit-dialog';
import type { RowDraft } from './own-draft';
import { useSay } from '../../../ui/voice';

const kinds = (['value', 'curve', 'weighings', 'attestation'] as const).flatMap(kindsTakenAs);

type FigureFieldProps = { row: RowDraft; error: string | undefined; onChange: (row: RowDraft) => void };

/** The dialog is the same as in a plan. */
export function FigureField({ row, error, onChange }: FigureFieldProps) {
  const say = useSay('own-limits');
  const [isOpen, setOpen] = useState(false);
  const take = (limit: CriticalLimit) => {
    onChange({ ...row, limit, known: knownOf(limit, row.known) });
    setOpen(false);
  };
  return (
    <Stack gap="near">
      {row.limit && <LimitView limit={row.limit} />}
      {error && (
        <p className={drafting.fault} role="alert">
          <FaultWords said={error} />
        </p>
      )}
      <Row>
        <Button look={row.limit ? 'plain' : 'primary'} onClick={() => setOpen(true)}>
          {say(row.limit ? 'change-figures' : 'write-figures')}
        </Button>
      </Row>
      {isOpen && <LimitDialog kinds={kinds} before={row.limit} onDone={take} onClose={() => setOpen(false)} />}
    </Stack>
  );
}

/** Only a figure confirmed in its source counts as read there. */
function knownOf({ source }: CriticalLimit, before: RowDraft['known']): RowDraft['known'] {
  if (source.confirmed) return 'read in the source';
  return before === 'read in the source' ? 'from memory' : before;
}
