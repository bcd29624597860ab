import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { Form } from '../../../ui/form';
import { Question } from '../../../ui/question';
import { Stack } from '../../../ui/stack';
import { wallTime } from '../../../ui/wall-time';
import { useSay } from '../../../ui/voice';
import type { Item } from '../known';
import { labelErrors, type Label } from './delivery-draft';
import { LabelFields } from './label-fields';

type LabelQuestionProps = { item: Item; label: Label; onLabel: (label: Label) => void };

/** The strength of curing salt may differ from bag to bag. */
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
  return (
    <Question title={say('label-question')}>
      <Form errors={errors} onSubmit={next}>
        <Stack>
          <LabelFields item={item} label={draft} errors={errors} onChange={setDraft} />
          <Button type="submit" look="primary">
            {sayShared('next')}
          </Button>
        </Stack>
      </Form>
    </Question>
  );
}
