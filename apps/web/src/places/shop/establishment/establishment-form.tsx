import { changeEstablishment, type EstablishmentFields } from '@larderbook/contracts';
import { useState } from 'react';
import { useSend } from '../../../api/use-send';
import { newId } from '../../../outbox/new-id';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Form } from '../../../ui/form';
import { Problem } from '../../../ui/problem';
import { Row, Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import { EditionField } from './edition-field';
import { HabitsFields } from './habits-fields';
import { LotCodeField } from './lot-code-field';
import { ShopFields } from './shop-fields';
import { WhereFields } from './where-fields';

type EstablishmentFormProps = { establishment: EstablishmentFields; onDone: () => void };

/** What was recorded under the earlier details keeps them. */
export function EstablishmentForm({ establishment, onDone }: EstablishmentFormProps) {
  const say = useSay('shop');
  const sayShared = useSay('shared');
  const [detailsId] = useState(newId);
  const [draft, setDraft] = useState(establishment);
  const { send, busy, errors, problem } = useSend(changeEstablishment, () => {
    announce(say('details-changed'));
    onDone();
  });
  return (
    <Form errors={errors} busy={busy} onSubmit={() => send({ ...draft, detailsId })}>
      <Stack>
        <ShopFields value={draft} errors={errors} onChange={setDraft} />
        <HabitsFields value={draft} errors={errors} onChange={setDraft} />
        <WhereFields value={draft} errors={errors} onChange={setDraft} />
        <EditionField value={draft} error={errors.limitSet} onChange={(limitSet) => setDraft({ ...draft, limitSet })} />
        <LotCodeField
          zone={draft.timeZone}
          value={draft.lotCodePattern}
          error={errors.lotCodePattern}
          onChange={(lotCodePattern) => setDraft({ ...draft, lotCodePattern })}
        />
        {problem !== undefined && <Problem error={problem} />}
        <Row>
          <Button type="submit" look="primary" busy={busy}>
            {sayShared('save')}
          </Button>
          <Button onClick={onDone}>{sayShared('cancel')}</Button>
        </Row>
      </Stack>
    </Form>
  );
}
