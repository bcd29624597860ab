import { recordReceipt, type Receipt } from '@larderbook/contracts';
import { useState } from 'react';
import { useRecording } from '../../../outbox/use-recording';
import { PageHeader } from '../../../ui/page-header';
import { Stack } from '../../../ui/stack';
import { useFigures, useSay } from '../../../ui/voice';
import type { Item, Supplier } from '../known';
import { DecisionQuestion } from './decision-question';
import { DeliverySaved } from './delivery-saved';
import { emptyLabel, labelFor, receiptOf, stepsFor, verdictOf, type DeliveryDraft, type DeliveryStep } from './delivery-draft';
import { ItemQuestion } from './item-question';
import { LabelQuestion } from './label-question';
import { SoFar } from './so-far';
import { StepBack } from './step-back';
import { SupplierQuestion } from './supplier-question';
import { TemperatureQuestion } from './temperature-question';
import { WeightQuestion } from './weight-question';

type RecordDeliveryProps = { items: Item[]; suppliers: Supplier[]; receipts: Receipt[] };

const nothingYet: DeliveryDraft = { label: emptyLabel };

export function RecordDelivery({ items, suppliers, receipts }: RecordDeliveryProps) {
  const say = useSay('receiving');
  const { quantity } = useFigures();
  const recording = useRecording(recordReceipt);
  const [draft, setDraft] = useState(nothingYet);
  const [step, setStep] = useState<DeliveryStep>('item');
  const steps = stepsFor(draft.item);
  const at = steps.indexOf(step);
  const take = (parts: Partial<DeliveryDraft>, ofSteps = steps) => {
    setDraft({ ...draft, ...parts });
    setStep(ofSteps[at + 1] ?? step);
  };
  const save = (decision: 'accepted' | 'refused', reason: string) => {
    const takenAt = draft.came ?? new Date().toISOString();
    const record = receiptOf(draft, { receiptId: recording.id, decision, reason, takenAt });
    if (record) void recording.save(record, say(`delivery-${decision}`, { item: draft.item?.name ?? '', weight: quantity(record.weight) }));
  };
  const another = () => {
    recording.again();
    setDraft(nothingYet);
    setStep('item');
  };

  if (recording.saved) {
    return (
      <Stack>
        <PageHeader title={say('record-delivery')} over={say('receiving')} />
        <DeliverySaved saved={recording.saved} draft={draft} verdict={verdictOf(draft.item, draft.temperature)} onAnother={another} />
      </Stack>
    );
  }
  const before = draft.item && receipts.find(({ item }) => item.itemId === draft.item?.itemId);
  return (
    <Stack>
      <PageHeader title={say('record-delivery')} over={say('step-of', { step: String(at + 1), steps: String(steps.length) })} />
      {step !== 'decision' && <SoFar draft={draft} steps={steps.slice(0, at)} />}
      {step === 'item' && (
        <ItemQuestion
          items={items}
          receipts={receipts}
          onItem={(item) => take({ item, label: labelFor(item, draft.supplier), temperature: undefined }, stepsFor(item))}
        />
      )}
      {step === 'supplier' && draft.item && (
        <SupplierQuestion
          suppliers={suppliers}
          item={draft.item}
          receipts={receipts}
          onSupplier={(supplier) =>
            take({ supplier, label: { ...draft.label, supplierEstablishmentNumber: supplier.establishmentNumber ?? '' } })
          }
        />
      )}
      {step === 'label' && draft.item && <LabelQuestion item={draft.item} label={draft.label} onLabel={(label) => take({ label })} />}
      {step === 'weight' && draft.item && <WeightQuestion before={before} weight={draft.weight} onWeight={(weight) => take({ weight })} />}
      {step === 'temperature' && draft.item && (
        <TemperatureQuestion
          item={draft.item}
          before={before}
          temperature={draft.temperature}
          onTemperature={(temperature) => take({ temperature })}
        />
      )}
      {step === 'decision' && <DecisionQuestion draft={draft} progress={recording} onChange={setDraft} onDecide={save} onStep={setStep} />}
      <StepBack isFirst={at === 0} onBack={() => setStep(steps[at - 1] ?? 'item')} />
    </Stack>
  );
}
