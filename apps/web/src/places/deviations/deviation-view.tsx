import { printDeviationReport, type Deviation } from '@larderbook/contracts';
import { useState } from 'react';
import { hrefOf } from '../../api/client';
import { useShop } from '../../api/use-shop';
import type { Entry } from '../../outbox/entry';
import { Button } from '../../ui/button';
import { LinkButton } from '../../ui/link-button';
import { PaperButton } from '../../ui/paper-button';
import { useEntered } from '../../ui/moment';
import { PageHeader } from '../../ui/page-header';
import { Row, Stack } from '../../ui/stack';
import { Status } from '../../ui/status';
import { useSay } from '../../ui/voice';
import { Close } from './close';
import { CorrectiveAction } from './corrective-action';
import { Decide } from './decide';
import css from './deviations.module.css';
import { nextPart, whyNot, type Part } from './next-part';
import { NextPart } from './next-part-card';
import { RecordedParts } from './recorded-parts';
import { SaidOfReadings } from './said-of-readings';
import { about } from './about';
import { refusedAction } from './unsent-about';
import { WhatWasMissed } from './what-was-missed';

/** `unsent` entries are on this device only. */
export function DeviationView({ deviation, unsent }: { deviation: Deviation; unsent: Entry[] }) {
  const say = useSay('deviations');
  const { roles } = useShop();
  const [doing, setDoing] = useState<Part>();
  const next = nextPart(deviation);
  const { deviationId, number, open, opened, lot, shippedAlready } = deviation;
  const waiting = unsent.filter(({ state }) => state !== 'parked').length;
  const mayAdd = waiting === 0 && open && next !== 'action' && whyNot('action', roles) === undefined;
  return (
    <Stack>
      <PageHeader
        title={say('numbered', { number: String(number) })}
        over={<Opened opened={opened} />}
        under={
          <>
            <Status state={open ? 'missed' : 'met'} word={say(open ? 'open' : 'closed')} size="large" />
            <p>{about(deviation, say)}</p>
          </>
        }
        actions={<PaperButton href={(language) => hrefOf(printDeviationReport, { deviationId, language })}>{say('on-paper')}</PaperButton>}
      />
      {shippedAlready && (
        <p className={css.recall} role="alert">
          <strong>{say('left-already')}</strong> {say('consider-recall')}
        </p>
      )}
      <NextPart deviation={deviation} unsent={waiting} onDo={setDoing} />
      <WhatWasMissed deviation={deviation} />
      <SaidOfReadings deviation={deviation} />
      <RecordedParts deviation={deviation} />
      <Row>
        {lot && (
          <LinkButton to="/lots/$lotId" params={{ lotId: lot.lotId }}>
            {say('sheet-of-lot', { code: lot.code })}
          </LinkButton>
        )}
        {shippedAlready && <LinkButton to="/trace">{say('trace')}</LinkButton>}
        {mayAdd && <Button onClick={() => setDoing('action')}>{say('add-to-action')}</Button>}
      </Row>
      {doing === 'action' && <CorrectiveAction deviation={deviation} refused={refusedAction(unsent)} onClose={() => setDoing(undefined)} />}
      {doing === 'disposition' && <Decide deviation={deviation} onClose={() => setDoing(undefined)} />}
      {doing === 'closing' && <Close deviation={deviation} onClose={() => setDoing(undefined)} />}
    </Stack>
  );
}

function Opened({ opened }: Pick<Deviation, 'opened'>) {
  const say = useSay('deviations');
  const entered = useEntered(opened);
  const said = { when: { at: opened.at }, who: opened.name };
  return entered ? `${say('opened-by', said)}, ${entered}` : say('opened-by', said);
}
