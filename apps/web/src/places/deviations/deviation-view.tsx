import { printDeviationReport, type Deviation } from '@larderbook/contracts';
import { useState } from 'react';
import { hrefOf } from '../../api/client';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { FileButton, LinkButton } from '../../ui/link-button';
import { BothMoments } from '../../ui/moment';
import { PageHeader } from '../../ui/page-header';
import { Row, Stack } from '../../ui/stack';
import { Status } from '../../ui/status';
import { Close } from './close';
import { CorrectiveAction } from './corrective-action';
import { Decide } from './decide';
import css from './deviations.module.css';
import { nextPart, whyNot, type Part } from './next-part';
import { NextPart } from './next-part-card';
import { RecordedParts } from './recorded-parts';
import { SaidOfReadings } from './said-of-readings';
import { sayAbout } from './say-deviation';
import { WhatWasMissed } from './what-was-missed';

/** One deviation: what was missed, what the plan says, what is still to be done and by whom, and what was recorded. */
export function DeviationView({ deviation }: { deviation: Deviation }) {
  const { zone, roles } = useShop();
  const [doing, setDoing] = useState<Part>();
  const next = nextPart(deviation);
  const { deviationId, number, open, opened, lot, shippedAlready } = deviation;
  const mayAdd = open && next !== 'action' && whyNot('action', roles) === undefined;
  return (
    <Stack>
      <PageHeader
        title={`Deviation ${number}`}
        over={
          <>
            Opened <BothMoments at={opened.at} recordedAt={opened.recordedAt} zone={zone} /> by {opened.name}
          </>
        }
        under={
          <>
            <Status state={open ? 'missed' : 'met'} word={open ? 'Open' : 'Closed'} size="large" />
            <p>{sayAbout(deviation)}</p>
          </>
        }
        actions={<FileButton href={hrefOf(printDeviationReport, { deviationId })}>On paper</FileButton>}
      />
      {shippedAlready && (
        <p className={css.recall} role="alert">
          <strong>Product of this lot has already left.</strong> Consider a recall: trace where it went before anything else.
        </p>
      )}
      <NextPart deviation={deviation} onDo={setDoing} />
      <WhatWasMissed deviation={deviation} />
      <SaidOfReadings deviation={deviation} />
      <RecordedParts deviation={deviation} />
      <Row>
        {lot && (
          <LinkButton to="/lots/$lotId" params={{ lotId: lot.lotId }}>
            Day sheet of lot {lot.code}
          </LinkButton>
        )}
        {shippedAlready && <LinkButton to="/trace">Trace</LinkButton>}
        {mayAdd && <Button onClick={() => setDoing('action')}>Add to the corrective action</Button>}
      </Row>
      {doing === 'action' && <CorrectiveAction deviation={deviation} onClose={() => setDoing(undefined)} />}
      {doing === 'disposition' && <Decide deviation={deviation} onClose={() => setDoing(undefined)} />}
      {doing === 'closing' && <Close deviation={deviation} onClose={() => setDoing(undefined)} />}
    </Stack>
  );
}
