import type { Lot } from '@larderbook/contracts';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { Tiles } from '../../../ui/tiles';
import type { SheetLine } from '../sheet/sheet-line';
import type { Amending } from './amending';
import { PutInMeat } from './put-in-meat';
import { RecordAnswer } from './record-answer';
import { RecordNumber } from './record-number';
import { Weigh } from './weigh';

const usual = ['Typed wrongly', 'Read wrongly', 'Wrong unit', 'Entered for the wrong thing'];

/** Corrects an entry by a newer one: first why, then the value as it should have been. Both stay on the sheet. */
export function Correct({ lot, line, onClose }: { lot: Lot; line: SheetLine; onClose: () => void }) {
  const [reason, setReason] = useState<string>();
  const [own, setOwn] = useState('');
  if (reason)
    return (
      <Again
        lot={lot}
        line={line}
        amending={{ id: line.id, takenAt: new Date(line.at).toISOString(), reason }}
        onClose={onClose}
      />
    );
  return (
    <Dialog
      title={`Correct ${line.what} ${line.value ?? ''}`}
      onClose={onClose}
      actions={
        own.trim() !== '' && (
          <Button look="primary" onClick={() => setReason(own.trim())}>
            Next
          </Button>
        )
      }
    >
      <Stack>
        <p>Why is it corrected? What was entered stays on the sheet, struck through, with this reason.</p>
        <Tiles
          label="Usual reasons"
          tiles={usual.map((each) => ({ key: each, title: each, onTap: () => setReason(each) }))}
        />
        <TextArea label="Another reason" optional maxLength={2000} value={own} onChange={setOwn} />
      </Stack>
    </Dialog>
  );
}

function Again({
  lot,
  line,
  amending,
  onClose,
}: {
  lot: Lot;
  line: SheetLine;
  amending: Amending;
  onClose: () => void;
}) {
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
  const point = lot.controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === line.controlPointId);
  if (!point) return null;
  const Form = point.controlPoint.takenAs === 'attestation' ? RecordAnswer : RecordNumber;
  return <Form lot={lot} point={point} amending={amending} onClose={onClose} />;
}
