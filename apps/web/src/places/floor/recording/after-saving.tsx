import { flagWords, type Flag } from '@larderbook/contracts';
import type { Verdict } from '@larderbook/haccp';
import { useEffect, type ReactNode } from 'react';
import { announce } from '../../../ui/announcer';
import { LinkButton } from '../../../ui/link-button';
import { Row, Stack } from '../../../ui/stack';
import css from './recording.module.css';
import { VerdictWords } from '../../../ui/verdict-words';

type AfterSavingProps = {
  /** `kept`: on this device only, so the verdicts are a preview. */
  state: 'sent' | 'kept';
  /** What was recorded: "Core temperature 151.5 °F". */
  what: string;
  verdicts?: Verdict[];
  flags?: Flag[];
  deviationId?: string;
  /** What the plan says to do when the limit is missed. */
  correctiveAction?: string;
  /** The ways on, besides closing. */
  children?: ReactNode;
};

/** Shown at once after saving: whether it was sent, the verdict, what to do about a miss, and the way on. */
export function AfterSaving({ state, what, verdicts = [], flags = [], deviationId, correctiveAction, children }: AfterSavingProps) {
  const missed = verdicts.some(({ kind }) => kind === 'missed');
  useEffect(() => {
    if (missed) announce(`Limit missed: ${what}`, { urgent: true, unseen: true });
  }, [missed, what]);
  return (
    <Stack>
      <div className={css.saved}>
        <p className={css.savedWhat}>{what}</p>
        <p>{state === 'sent' ? 'Recorded.' : `Kept on this device. It is sent when the connection is back${verdicts.length > 0 ? '; until then this is a preview' : ''}.`}</p>
        {flags.map((flag) => <p key={flag} className={css.flag}>{flagWords[flag]}</p>)}
      </div>
      {verdicts.map((verdict) => (
        <div key={`${verdict.limit} ${verdict.because}`}>
          <VerdictWords verdict={verdict} size="large" />
          <p className={css.source}>{verdict.limit}: {[verdict.source.citation, verdict.source.edition].filter(Boolean).join(', ')}</p>
        </div>
      ))}
      {missed && correctiveAction && (
        <div className={css.plan}>
          <p className={css.planTitle}>What the plan says to do</p>
          <p>{correctiveAction}</p>
        </div>
      )}
      <Row>
        {deviationId && <LinkButton look="primary" to="/deviations/$deviationId" params={{ deviationId }}>Record the corrective action</LinkButton>}
        {children}
      </Row>
    </Stack>
  );
}
