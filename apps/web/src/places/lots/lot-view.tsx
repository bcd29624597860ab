import { printLotRecord, type Lot } from '@larderbook/contracts';
import { useState } from 'react';
import { hrefOf } from '../../api/client';
import { useShop } from '../../api/use-shop';
import type { Entry } from '../../outbox/entry';
import { Button } from '../../ui/button';
import { LinkButton } from '../../ui/link-button';
import { PaperButton } from '../../ui/paper-button';
import { useEntered } from '../../ui/moment';
import { PageHeader } from '../../ui/page-header';
import { Section } from '../../ui/section';
import { Row, Stack } from '../../ui/stack';
import { Status } from '../../ui/status';
import { useAccount } from '../../ui/use-account';
import { useSay } from '../../ui/voice';
import { InDoubt } from './clarifying/in-doubt';
import { NextCard } from './next/next-card';
import { PointRow } from './points/point-row';
import { forecastWith } from './preview/preview-forecast';
import { withUnsent } from './preview/with-unsent';
import type { Doing } from './recording/doing';
import { RecordingDialog } from './recording/recording-dialog';
import { DaySheet } from './sheet/day-sheet';
import { keptLines } from './sheet/kept-lines';
import { standingState } from './standing-state';

/** `unsent` entries are on this device only. */
export function LotView({ lot, unsent }: { lot: Lot; unsent: Entry[] }) {
  const say = useSay('lots');
  const tell = useAccount();
  const { mayRecord } = useShop();
  const [doing, setDoing] = useState<Doing>();
  const kept = keptLines(unsent, lot, useSay('day-sheet'));
  return (
    <Stack>
      <PageHeader
        title={`${lot.code} ${lot.productName}`}
        over={<Started lot={lot} />}
        under={
          <>
            <Status state={standingState[lot.standing]} word={say(`standing-${lot.standing}`)} size="large" />
            {lot.standing !== 'in-work' && <p>{tell(lot.because)}</p>} {/* of a lot in work the card says what is next */}
          </>
        }
      />
      <NextCard
        lot={lot}
        unsent={kept.length}
        forecastOf={(point) => forecastWith(point, withUnsent(lot, unsent), kept.length > 0)}
        onDo={setDoing}
      />
      {lot.controlPoints.length > 0 && (
        <PointRow
          lotId={lot.lotId}
          points={lot.controlPoints}
          onOpen={mayRecord ? (point) => setDoing({ what: 'record', controlPointId: point.controlPoint.controlPointId }) : undefined}
        />
      )}
      <InDoubt points={lot.controlPoints} onClarify={mayRecord ? (of) => setDoing({ what: 'clarify', ...of }) : undefined} />
      <Section
        title={say('day-sheet')}
        aside={<PaperButton href={(language) => hrefOf(printLotRecord, { lotId: lot.lotId, language })}>{say('on-paper')}</PaperButton>}
      >
        <DaySheet lot={lot} kept={kept} onCorrect={mayRecord ? (line) => setDoing({ what: 'correct', line }) : undefined} />
      </Section>
      {mayRecord && <Anything lotId={lot.lotId} onDo={setDoing} />}
      {doing && <RecordingDialog lot={withUnsent(lot, unsent)} doing={doing} onDo={setDoing} onClose={() => setDoing(undefined)} />}
    </Stack>
  );
}

/** What may be recorded on a lot at any time. */
function Anything({ lotId, onDo }: { lotId: string; onDo: (doing: Doing) => void }) {
  const say = useSay('lots');
  return (
    <Row>
      <Button onClick={() => onDo({ what: 'put in meat' })}>{say('put-in-meat')}</Button>
      <Button onClick={() => onDo({ what: 'weigh' })}>{say('weigh-ingredient')}</Button>
      <Button onClick={() => onDo({ what: 'pack' })}>{say('pack')}</Button>
      <Button onClick={() => onDo({ what: 'take out' })}>{say('take-out')}</Button>
      <Button onClick={() => onDo({ what: 'report' })}>{say('unforeseen')}</Button>
      <LinkButton to="/lots/$lotId/review" params={{ lotId }}>
        {say('review')}
      </LinkButton>
    </Row>
  );
}

function Started({ lot: { startedAt, made } }: { lot: Lot }) {
  const say = useSay('lots');
  const entered = useEntered({ at: startedAt, recordedAt: made.recordedAt });
  const when = { at: startedAt };
  return entered ? say('lot-started-entered', { when, entered }) : say('lot-started', { when });
}
