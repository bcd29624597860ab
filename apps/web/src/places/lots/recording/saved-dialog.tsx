import type { ControlPoint, Flag } from '@larderbook/contracts';
import { RANK, type Told, type Verdict } from '@larderbook/haccp';
import { useEffect, useState, type ReactNode } from 'react';
import { announce, hush } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { LinkButton } from '../../../ui/link-button';
import { Row, Stack } from '../../../ui/stack';
import { Status } from '../../../ui/status';
import { statusOf } from '../../../ui/status-of';
import { SourceLine } from '../../../ui/source-line';
import { useTell } from '../../../ui/use-tell';
import { VerdictWords } from '../../../ui/verdict-words';
import { useSay } from '../../../ui/voice';
import type { VerdictOn } from '../preview/verdict-on';
import css from './recording.module.css';
import { useMargin } from './use-margin';

/** Other parts of the server's answer are for the form. */
type Taken = { verdicts?: { limitId: string; verdict: Verdict }[]; flags?: Flag[]; deviationId?: string; [other: string]: unknown };

type SavedDialogProps = {
  title: string;
  what: string;
  saved: { state: 'sent'; reply: Taken } | { state: 'kept' };
  /** Shown while only this device has it. */
  preview?: VerdictOn[];
  limits?: ControlPoint['limits'];
  forecast?: ReactNode;
  /** Says at once that it will, or may, be too late. */
  isPressing?: boolean;
  correctiveAction?: string;
  children?: ReactNode;
  onClose: () => void;
};

export function SavedDialog({
  title,
  what,
  saved,
  preview = [],
  limits = [],
  forecast,
  isPressing = false,
  correctiveAction,
  children,
  onClose,
}: SavedDialogProps) {
  const say = useSay('lot-forms');
  const sayShared = useSay('shared');
  const sayEntry = useSay('entries');
  const told = saved.state === 'sent' ? saved.reply : undefined;
  const { tell } = useTell();
  const limitOf = (id: string) => limits.find(({ limitId }) => limitId === id)?.limit;
  const verdicts = told
    ? (told.verdicts ?? []).map(({ limitId, verdict }) => tell(verdict, limitOf(limitId)))
    : preview.map((verdict) => tell(verdict, verdict.on));
  const misses = verdicts.filter(({ kind }) => kind === 'missed');
  const missed = misses.length > 0;
  const isAllDone = !told?.deviationId && !children;
  const isAtOnce = isPressing || verdicts.length === 0;
  useEffect(() => {
    if (missed) announce(say('limit-missed', { what }), { urgent: true, unseen: true });
    else if (told) hush();
  }, [missed, told, what, say]);
  return (
    <Dialog title={title} onClose={onClose} closeLabel={sayShared('done')} closeLook={isAllDone ? 'primary' : 'quiet'}>
      <Stack>
        <div className={css.saved}>
          <div className={css.savedLine}>
            <p className={css.savedWhat}>{what}</p>
            <p>{told ? sayShared('saved') : verdicts.length > 0 ? say('kept-as-preview') : sayShared('kept-here')}</p>
          </div>
          {told?.flags?.map((flag) => (
            <p key={flag} className={css.flag}>
              {sayEntry(flag)}
            </p>
          ))}
        </div>
        {misses.map((verdict) => (
          <VerdictWords key={`${verdict.limit} ${verdict.because}`} verdict={verdict} size="large" />
        ))}
        {!missed && <Stands verdicts={verdicts} />}
        {isAtOnce && forecast}
        {missed && correctiveAction && (
          <div className={css.plan}>
            <p className={css.planTitle}>{say('plan-says')}</p>
            <p>{correctiveAction}</p>
          </div>
        )}
        {!isAllDone && (
          <Row>
            {told?.deviationId && (
              <LinkButton look="primary" to="/deviations/$deviationId" params={{ deviationId: told.deviationId }}>
                {say('record-action')}
              </LinkButton>
            )}
            {children}
          </Row>
        )}
        <Why verdicts={verdicts}>{!isAtOnce && forecast}</Why>
      </Stack>
    </Dialog>
  );
}

function Stands({ verdicts }: { verdicts: Told[] }) {
  const marginAt = useMargin();
  const [governs] = [...verdicts].sort((a, b) => RANK[a.kind] - RANK[b.kind]);
  if (!governs) return null;
  return (
    <div className={css.saved}>
      <Status {...statusOf(governs)} margin={marginAt(governs)} size="large" />
      {governs.kind === 'undetermined' && <p>{governs.next ?? governs.because}</p>}
    </div>
  );
}

/** The reason is behind a tap, since most entries need none. */
function Why({ verdicts, children }: { verdicts: Told[]; children: ReactNode }) {
  const say = useSay('lot-forms');
  const [isOpen, setOpen] = useState(false);
  if (verdicts.length === 0) return null;
  return (
    <div>
      <Button look="quiet" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
        {say('why-by-which')}
      </Button>
      {isOpen && (
        <Stack>
          {children}
          {verdicts.map((verdict) => (
            <div key={`${verdict.limit} ${verdict.because}`}>
              {verdict.kind !== 'missed' && <VerdictWords verdict={verdict} />}
              <p className={css.source}>
                {say('limit-source', { limit: verdict.limit })} <SourceLine source={verdict.source} />
              </p>
            </div>
          ))}
        </Stack>
      )}
    </div>
  );
}
