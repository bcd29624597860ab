import type { Lot } from '@larderbook/contracts';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { WhyDialog } from '../../../ui/why-dialog';
import { useSay } from '../../../ui/voice';
import type { SheetLine } from '../sheet/sheet-line';
import type { Amending } from './amending';
import { FinishStage } from './finish-stage';
import { Pack } from './pack';
import { PutInMeat } from './put-in-meat';
import { RecordAnswer } from './record-answer';
import { RecordNumber } from './record-number';
import { TakeOut } from './take-out';
import { VoidEntry } from './void-entry';
import { Weigh } from './weigh';

/** Both entries stay on the sheet. */
export function Correct({ lot, line, onClose }: { lot: Lot; line: SheetLine; onClose: () => void }) {
  const say = useSay('lot-forms');
  const sayShared = useSay('shared');
  const [reason, setReason] = useState<string>();
  const [voiding, setVoiding] = useState(false);
  if (reason)
    return (
      <Again
        lot={lot}
        line={line}
        amending={{ id: line.rowId ?? line.id, takenAt: new Date(line.at).toISOString(), reason }}
        onClose={onClose}
      />
    );
  if (voiding) return <VoidEntry line={line} onClose={onClose} />;
  return (
    <WhyDialog
      title={say('correct-what', { what: `${line.what} ${line.value ?? ''}`.trim() })}
      usual="to-correct"
      verb={sayShared('next')}
      instead={<Button onClick={() => setVoiding(true)}>{sayShared('void')}</Button>}
      onReason={setReason}
      onClose={onClose}
    >
      <p>{say('why-corrected')}</p>
    </WhyDialog>
  );
}

function Again({ lot, line, amending, onClose }: { lot: Lot; line: SheetLine; amending: Amending; onClose: () => void }) {
  if (line.kind === 'input') return <PutInMeat lot={lot} amending={amending} onClose={onClose} />;
  if (line.kind === 'weighing')
    return (
      <Weigh
        lot={lot}
        itemId={lot.weighings.find(({ weighingId }) => weighingId === line.id)?.item.itemId}
        amending={amending}
        onClose={onClose}
      />
    );
  if (line.kind === 'packing') return <Pack lot={lot} amending={amending} onClose={onClose} />;
  if (line.kind === 'removal') return <TakeOut lot={lot} amending={amending} onClose={onClose} />;
  const point = lot.controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === line.controlPointId);
  if (!point) return null;
  if (line.kind === 'stage end') return <FinishStage lot={lot} point={point} amending={amending} onClose={onClose} />;
  const Form = point.controlPoint.takenAs === 'attestation' ? RecordAnswer : RecordNumber;
  return <Form lot={lot} point={point} amending={amending} onClose={onClose} />;
}
