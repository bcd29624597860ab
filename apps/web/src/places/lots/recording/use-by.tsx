import type { Lot } from '@larderbook/contracts';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { DateField } from '../../../ui/date-field';
import { Dialog } from '../../../ui/dialog';
import { Facts } from '../../../ui/facts';
import { dateWords } from '../../../ui/moment';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { Circumstances } from './circumstances';
import type { TakenAt } from './use-taken-at';

type UseByProps = {
  lot: Lot;
  what: string;
  /** The day proposed: "2026-04-02". */
  proposed: string;
  takenAt: TakenAt;
  busy: boolean;
  refused?: string;
  onBack: () => void;
  /** The day, when it is another than the one proposed. */
  onKeep: (changed: string | undefined) => void;
  onClose: () => void;
};

/** The use-by of a run of packages as proposed, changed only when somebody wants it so. */
export function UseBy({ lot, what, proposed, takenAt, busy, refused, onBack, onKeep, onClose }: UseByProps) {
  const [changed, setChanged] = useState('');
  const facts = [
    { name: 'Use by', value: dateWords(changed || proposed) },
    { name: 'Storage', value: lot.storage },
  ];
  return (
    <Dialog
      title={`Pack ${what}`}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onBack}>Back to the weight</Button>
          <Button look="primary" busy={busy} onClick={() => onKeep(changed || undefined)}>
            Save
          </Button>
        </>
      }
    >
      <Circumstances takenAt={takenAt} />
      <Stack>
        <Facts facts={facts} />
        <DateField
          label="Another use-by"
          optional
          hint={`Proposed: ${lot.useByDays} days from packing`}
          value={changed}
          onChange={setChanged}
        />
        {refused && <Problem error={{ title: refused }} />}
      </Stack>
    </Dialog>
  );
}
