import type { ControlPoint } from '@larderbook/contracts';
import { kindsTakenAs, type CriticalLimit } from '@larderbook/haccp';
import { useState } from 'react';
import { newId } from '../../../outbox/new-id';
import { Button } from '../../../ui/button';
import { FaultWords } from '../../../ui/fault-words';
import { Row, Stack } from '../../../ui/stack';
import { LimitView } from '../document/limit-view';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../ui/voice';
import drafting from '../drafting/drafting.module.css';
import { LimitDialog } from './limit-dialog';
import { PublishedDialog } from './published-dialog';
import { SupportFields } from './support-fields';

type Limits = ControlPoint['limits'];
type LimitsFieldProps = { point: ControlPoint; error: string | undefined; onChange: (limits: Limits) => void };

export function LimitsField({ point: { limits, takenAs }, error, onChange }: LimitsFieldProps) {
  const [say, sayPlans, sayForms] = [useSay('plan-points'), useSay('plans'), useSay('limit-forms')];
  const [open, setOpen] = useState<'published' | 'own' | Limits[number]>();
  const kinds = kindsTakenAs(takenAs);
  const close = () => setOpen(undefined);
  const take = (limit: CriticalLimit, limitId = newId()) => {
    const at = limits.findIndex((other) => other.limitId === limitId);
    onChange(at < 0 ? [...limits, { limitId, limit }] : limits.with(at, { limitId, limit }));
    close();
  };
  return (
    <Stack>
      <ul className={drafting.lines}>
        {limits.map((entry, i) => (
          <li key={entry.limitId} className={drafting.slip}>
            <LimitView limit={entry.limit} />
            <SupportFields limit={entry.limit} onChange={(limit) => onChange(limits.with(i, { ...entry, limit }))} />
            {!kinds.includes(entry.limit.kind) && (
              <p className={drafting.fault} role="alert">
                {say('limit-unfit', { recorded: sayPlans(codeOf('taken', takenAs)) })}
              </p>
            )}
            <Row>
              <Button aria-label={sayForms('change-figures-of', { number: i + 1 })} onClick={() => setOpen(entry)}>
                {sayForms('change-figures')}
              </Button>
              <Button
                look="quiet"
                aria-label={sayForms('take-limit-out', { number: i + 1 })}
                onClick={() => onChange(limits.filter(({ limitId }) => limitId !== entry.limitId))}
              >
                {sayForms('take-out')}
              </Button>
            </Row>
          </li>
        ))}
      </ul>
      {error && (
        <p className={drafting.fault} role="alert">
          <FaultWords said={error} />
        </p>
      )}
      <Row>
        <Button onClick={() => setOpen('published')}>{sayForms('choose-published')}</Button>
        <Button onClick={() => setOpen('own')}>{sayForms('write-own')}</Button>
      </Row>
      {open === 'published' && <PublishedDialog kinds={kinds} onTake={take} onClose={close} />}
      {open === 'own' && <LimitDialog kinds={kinds} onDone={take} onClose={close} />}
      {typeof open === 'object' && (
        <LimitDialog kinds={kinds} before={open.limit} onDone={(limit) => take(limit, open.limitId)} onClose={close} />
      )}
    </Stack>
  );
}
