import type { Deviation, Voiding } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { Section } from '../../ui/section';
import { Row } from '../../ui/stack';
import { WhyDialog } from '../../ui/why-dialog';
import { writtenParts } from './action-parts';
import { By } from './by';
import { CorrectiveAction } from './corrective-action';
import css from './deviations.module.css';
import { Struck } from './struck';
import { VoidDecided } from './void-decided';

export type Written = Deviation['actions'][number] & { voided?: Voiding };
type WrittenActionProps = { deviation: Deviation; written: Written; title: string };

/** One corrective action in its parts; one that counts no more is struck through, with why. */
export function WrittenAction({ deviation, written, title }: WrittenActionProps) {
  const { mayRecord } = useShop();
  const [doing, setDoing] = useState<'correct' | 'void'>();
  const { actionId, action, made, voided } = written;
  const stop = () => setDoing(undefined);
  return (
    <Section title={title} aside={<By name={made.name} at={made.at} recordedAt={made.recordedAt} />}>
      <dl className={css.parts}>
        {writtenParts(action.form).map(({ key, question }) => {
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
            Correct it
          </Button>
          <Button look="quiet" onClick={() => setDoing('void')}>
            Void it
          </Button>
        </Row>
      )}
      {doing === 'correct' && <CorrectAction deviation={deviation} written={written} onClose={stop} />}
      {doing === 'void' && <VoidDecided what="action" amends={actionId} said="The corrective action" onClose={stop} />}
    </Section>
  );
}

/** First why, then the parts as they should have been. */
function CorrectAction({ deviation, written, onClose }: Omit<WrittenActionProps, 'title'> & { onClose: () => void }) {
  const [reason, setReason] = useState<string>();
  if (reason) return <CorrectiveAction deviation={deviation} amending={{ ...written, reason }} onClose={onClose} />;
  return (
    <WhyDialog title="Correct the corrective action" usual="to-correct" verb="Next" onReason={setReason} onClose={onClose}>
      <p>Why is it corrected? What was written stays here, struck through, with this reason.</p>
    </WhyDialog>
  );
}
