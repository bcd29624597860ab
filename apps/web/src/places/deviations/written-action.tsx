import type { Deviation, Voiding } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { Section } from '../../ui/section';
import { Row } from '../../ui/stack';
import { WhyDialog } from '../../ui/why-dialog';
import { useSay } from '../../ui/voice';
import { writtenParts } from './action-parts';
import { By } from './by';
import { CorrectiveAction } from './corrective-action';
import css from './deviations.module.css';
import { Struck } from './struck';
import { VoidDecided } from './void-decided';

export type Written = Deviation['actions'][number] & { voided?: Voiding };
type WrittenActionProps = { deviation: Deviation; written: Written; title: string };

/** An action that no longer counts is struck through, with why. */
export function WrittenAction({ deviation, written, title }: WrittenActionProps) {
  const say = useSay('deviations');
  const sayShared = useSay('shared');
  const parts = writtenParts(written.action.form, useSay('settling'));
  const { mayRecord } = useShop();
  const [doing, setDoing] = useState<'correct' | 'void'>();
  const { actionId, action, made, voided } = written;
  const stop = () => setDoing(undefined);
  return (
    <Section title={title} aside={<By name={made.name} at={made.at} recordedAt={made.recordedAt} />}>
      <dl className={css.parts}>
        {parts.map(({ key, question }) => {
          const said = (action as Record<string, string | undefined>)[key];
          return said ? (
            <div key={key}>
              <dt>{question}</dt>
              <dd>{voided ? <s>{said}</s> : said}</dd>
            </div>
          ) : null;
        })}
      </dl>
      {voided && <Struck {...voided} />}
      {mayRecord && !voided && (
        <Row>
          <Button look="quiet" onClick={() => setDoing('correct')}>
            {sayShared('correct')}
          </Button>
          <Button look="quiet" onClick={() => setDoing('void')}>
            {sayShared('void')}
          </Button>
        </Row>
      )}
      {doing === 'correct' && <CorrectAction deviation={deviation} written={written} onClose={stop} />}
      {doing === 'void' && <VoidDecided what="action" amends={actionId} said={say('the-action')} onClose={stop} />}
    </Section>
  );
}

function CorrectAction({ deviation, written, onClose }: Omit<WrittenActionProps, 'title'> & { onClose: () => void }) {
  const say = useSay('deviations');
  const sayShared = useSay('shared');
  const [reason, setReason] = useState<string>();
  if (reason) return <CorrectiveAction deviation={deviation} amending={{ ...written, reason }} onClose={onClose} />;
  return (
    <WhyDialog title={say('correct-action')} usual="to-correct" verb={sayShared('next')} onReason={setReason} onClose={onClose}>
      <p>{say('why-corrected')}</p>
    </WhyDialog>
  );
}
