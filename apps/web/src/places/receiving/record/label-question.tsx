import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { DateField } from '../../../ui/date-field';
import { Form } from '../../../ui/form';
import { Question } from '../../../ui/question';
import { Columns, Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { wallTime } from '../../../ui/wall-time';
import { FractionField } from '../items/fraction-field';
import type { Item } from '../known';
import { labelErrors, type Label } from './delivery-draft';

type LabelQuestionProps = { item: Item; label: Label; onLabel: (label: Label) => void };

/** What stands on the label; of curing salt also its strength, which may differ from bag to bag. */
export function LabelQuestion({ item, label, onLabel }: LabelQuestionProps) {
  const { zone } = useShop();
  const [draft, setDraft] = useState(label);
  const [errors, setErrors] = useState<Record<string, string>>({});
  const next = () => {
    const wrong = labelErrors(draft, item, wallTime(Date.now(), zone).slice(0, 10));
    setErrors(wrong);
    if (Object.keys(wrong).length === 0) onLabel(draft);
  };
  const isMeat = item.kind === 'meat';
  return (
    <Question title="What does the label say?">
      <Form errors={errors} onSubmit={next}>
        <Stack>
          <TextField
            label="Supplier’s lot"
            hint="As it stands on the box: by it a recall finds every package."
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
            label="Their establishment number"
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
                label="Kill date"
                optional
                value={draft.killDate}
                error={errors.killDate}
                onChange={(killDate) => setDraft({ ...draft, killDate })}
              />
            )}
            <DateField
              label="Pack date"
              optional
              value={draft.packDate}
              error={errors.packDate}
              onChange={(packDate) => setDraft({ ...draft, packDate })}
            />
          </Columns>
          <Button type="submit" look="primary">
            Next
          </Button>
        </Stack>
      </Form>
    </Question>
  );
}
