import { flagWords, type Flag } from '@larderbook/contracts';
import type { Verdict } from '@larderbook/haccp';
import { useEffect, type ReactNode } from 'react';
import { announce } from '../../../ui/announcer';
import { Dialog } from '../../../ui/dialog';
import { LinkButton } from '../../../ui/link-button';
import { Row, Stack } from '../../../ui/stack';
import { VerdictWords } from '../../../ui/verdict-words';
import { saySource } from '../say/say-source';
import css from './recording.module.css';

/** What the server may tell about a record that it took; other parts of its answer are for the form. */
type Told = { verdicts?: { verdict: Verdict }[]; flags?: Flag[]; deviationId?: string; [other: string]: unknown };

type SavedDialogProps = {
  title: string;
  /** What was recorded: "Core temperature 151.5 °F". */
  what: string;
  saved: { state: 'sent'; reply: Told } | { state: 'kept' };
  /** How it would be judged, shown while only this device has it. */
  preview?: Verdict[];
  /** When a running stage will be there, now that this was recorded. */
  forecast?: ReactNode;
  /** What the plan says to do when the limit is missed. */
  correctiveAction?: string;
  /** The ways on, besides closing. */
  children?: ReactNode;
  onClose: () => void;
};

/** Shown at once after saving: whether it was sent, the verdict, what to do about a miss, and the way on. */
export function SavedDialog({
  title,
  what,
  saved,
  preview = [],
  forecast,
  correctiveAction,
  children,
  onClose,
}: SavedDialogProps) {
  const told = saved.state === 'sent' ? saved.reply : undefined;
  const verdicts = told ? (told.verdicts ?? []).map(({ verdict }) => verdict) : preview;
  const missed = verdicts.some(({ kind }) => kind === 'missed');
  useEffect(() => {
    if (missed) announce(`Limit missed: ${what}`, { urgent: true, unseen: true });
  }, [missed, what]);
  return (
    <Dialog title={title} onClose={onClose} closeLabel="Done">
      <Stack>
        <div className={css.saved}>
          <p className={css.savedWhat}>{what}</p>
          <p>{told ? 'Recorded.' : sayKept(verdicts)}</p>
          {told?.flags?.map((flag) => (
            <p key={flag} className={css.flag}>
              {flagWords[flag]}
            </p>
          ))}
        </div>
        {verdicts.map((verdict) => (
          <div key={`${verdict.limit} ${verdict.because}`}>
            <VerdictWords verdict={verdict} size="large" />
            <p className={css.source}>
              {verdict.limit}: {saySource(verdict.source)}
            </p>
          </div>
        ))}
        {forecast}
        {missed && correctiveAction && (
          <div className={css.plan}>
            <p className={css.planTitle}>What the plan says to do</p>
            <p>{correctiveAction}</p>
          </div>
        )}
        <Row>
          {told?.deviationId && (
            <LinkButton look="primary" to="/deviations/$deviationId" params={{ deviationId: told.deviationId }}>
              Record the corrective action
            </LinkButton>
          )}
          {children}
        </Row>
      </Stack>
    </Dialog>
  );
}

const sayKept = (verdicts: Verdict[]): string =>
  verdicts.length > 0
    ? 'Kept on this device. It is sent when the connection is back; until then this is a preview.'
    : 'Kept on this device. It is sent when the connection is back.';
