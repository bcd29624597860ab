import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { DateField } from '../../../ui/date-field';
import { Form } from '../../../ui/form';
import { Question } from '../../../ui/question';
import { Columns, Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { wallTime } from '../../../ui/wall-time';
import { useSay } from '../../../ui/voice';
import { FractionField } from '../items/fraction-field';
import type { Item } from '../known';
import { labelErrors, type Label } from './delivery-draft';

type LabelQuestionProps = { item: Item; label: Label; onLabel: (label: Label) => void };

/** What stands on the label; of curing salt also its strength, which may differ from bag to bag. */
export function LabelQuestion({ item, label, onLabel }: LabelQuestionProps) {
  const say = useSay('receiving');
  const sayLimits = useSay('limits');
  const sayShared = useSay('shared');
  const { zone } = useShop();
  const [draft, setDraft] = useState(label);
  const [errors, setErrors] = useState<Record<string, string>>({});
  const next = () => {
    const wrong = labelErrors(draft, item, wallTime(Date.now(), zone).slice(0, 10), { say, sayLimits });
    setErrors(wrong);
    if (Object.keys(wrong).length === 0) onLabel(draft);
  };
  const isMeat = item.kind === 'meat';
  return (
    <Question title={say('label-question')}>
      <Form errors={errors} onSubmit={next}>
        <Stack>
          <TextField
            label={say('supplier-lot')}
            hint={say('lot-hint')}
            autoComplete="off"
            autoCapitalize="characters"
            spellCheck={false}
            maxLength={80}
            value={draft.supplierLot}
            error={errors.supplierLot}
            onChange={(supplierLot) => setDraft({ ...draft, supplierLot })}
          />
          {item.substance && (
            <FractionField
              substance={item.substance}
              value={draft.fraction}
              error={errors.fractionPercent}
              onChange={(fraction) => setDraft({ ...draft, fraction })}
            />
          )}
          <TextField
            label={say('their-establishment')}
            optional
            autoComplete="off"
            spellCheck={false}
            maxLength={40}
            value={draft.supplierEstablishmentNumber}
            error={errors.supplierEstablishmentNumber}
            onChange={(supplierEstablishmentNumber) => setDraft({ ...draft, supplierEstablishmentNumber })}
          />
          <Columns>
            {isMeat && (
              <DateField
                label={say('kill-date')}
                optional
                value={draft.killDate}
                error={errors.killDate}
                onChange={(killDate) => setDraft({ ...draft, killDate })}
              />
            )}
            <DateField
              label={say('pack-date')}
              optional
              value={draft.packDate}
              error={errors.packDate}
              onChange={(packDate) => setDraft({ ...draft, packDate })}
            />
          </Columns>
          <Button type="submit" look="primary">
            {sayShared('next')}
          </Button>
        </Stack>
      </Form>
    </Question>
  );
}
