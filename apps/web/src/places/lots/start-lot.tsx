import { startLot } from '@larderbook/contracts';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useShop } from '../../api/use-shop';
import { useRecording } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { DateTimeField } from '../../ui/date-time-field';
import { LinkButton } from '../../ui/link-button';
import { Problem } from '../../ui/problem';
import { Row, Stack } from '../../ui/stack';
import { TextField } from '../../ui/text-field';
import { useSay } from '../../ui/voice';
import type { ProductHead } from './start-lot-page';

/** Without a code of one's own the shop's pattern makes one. */
export function StartLot({ product, onBack }: { product: ProductHead; onBack: () => void }) {
  const say = useSay('lots');
  const navigate = useNavigate();
  const { zone } = useShop();
  const recording = useRecording(startLot);
  const [code, setCode] = useState('');
  const [note, setNote] = useState('');
  const [startedAt, setStartedAt] = useState('');
  const isReady = product.formulaVersion !== undefined && product.planInForce !== undefined;
  const start = async () => {
    const lotId = recording.id;
    const saved = await recording.save(
      {
        lotId,
        productId: product.productId,
        code: code.trim().toUpperCase() || undefined,
        note,
        takenAt: startedAt || new Date().toISOString(),
      },
      say('lot-of-started', { product: product.name }),
    );
    if (saved) void navigate({ to: '/lots/$lotId', params: { lotId }, replace: true });
  };
  return (
    <Stack>
      <h2>{product.name}</h2>
      {!isReady && (
        <Problem
          error={{
            title: say('cannot-start'),
            detail: say('cannot-start-because'),
          }}
        >
          <LinkButton to="/products">{say('products')}</LinkButton>
        </Problem>
      )}
      <TextField
        label={say('lot-code')}
        optional
        hint={say('lot-code-hint')}
        maxLength={20}
        error={recording.refused?.fields.code}
        autoCapitalize="characters"
        autoComplete="off"
        value={code}
        onChange={setCode}
      />
      <DateTimeField
        label={say('when-began')}
        optional
        hint={say('when-began-hint')}
        zone={zone}
        value={startedAt}
        onChange={setStartedAt}
        error={recording.refused?.fields.takenAt}
      />
      <TextField label={say('note')} optional maxLength={400} value={note} onChange={setNote} />
      {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      <Row>
        {isReady && (
          <Button look="primary" busy={recording.busy && say('starting')} onClick={() => void start()}>
            {say('start-the-lot')}
          </Button>
        )}
        <Button onClick={onBack}>{say('another-product')}</Button>
      </Row>
    </Stack>
  );
}
