import type { OwnLimitRow } from '@larderbook/contracts';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { NumberField } from '../../../ui/number-field';
import { SelectField } from '../../../ui/select-field';
import { Columns, Row, Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { conditionKinds, conditionOf, noCondition, withCondition, type ConditionDraft } from './condition-of';
import css from './own-limits.module.css';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';
import { productClasses } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';

type Conditions = OwnLimitRow['conditions'];
type ConditionsFieldProps = { conditions: Conditions; onChange: (conditions: Conditions) => void };

export function ConditionsField({ conditions, onChange }: ConditionsFieldProps) {
  const sayShared = useSay('shared');
  const say = useSay('own-limits');
  const { sayCondition } = useLimits();
  const [draft, setDraft] = useState<ConditionDraft>(noCondition);
  const [fault, setFault] = useState<string>();
  const add = () => {
    const read = conditionOf(draft, say);
    setFault('fault' in read ? read.fault : undefined);
    if ('fault' in read) return;
    onChange(withCondition(conditions, read.value) as Conditions);
    setDraft(noCondition);
  };
  return (
    <Stack gap="near">
      <h4>{say('conditions')}</h4>
      {conditions.length === 0 && <p>{say('for-everything')}</p>}
      <ul className={css.lines}>
        {conditions.map((condition, i) => (
          <li key={i} className={css.line}>
            <span>{sayCondition(condition)}</span>
            <Button
              look="quiet"
              aria-label={say('remove-condition', { condition: sayCondition(condition) })}
              onClick={() => onChange(conditions.toSpliced(i, 1))}
            >
              {sayShared('remove')}
            </Button>
          </li>
        ))}
      </ul>
      <Columns>
        <SelectField
          label={say('another-condition')}
          optional
          choices={conditionKinds.map((value) => ({ value, name: say(codeOf('condition', value)) }))}
          value={draft.kind}
          onChange={(kind) => setDraft({ kind, said: '' })}
        />
        {draft.kind !== '' && <Said draft={draft} error={fault} onChange={(said) => setDraft({ ...draft, said })} />}
      </Columns>
      {draft.kind !== '' && (
        <Row>
          <Button onClick={add}>{say('add-condition')}</Button>
        </Row>
      )}
    </Stack>
  );
}

type SaidProps = { draft: ConditionDraft; error: string | undefined; onChange: (said: string) => void };

function Said({ draft: { kind, said }, error, onChange }: SaidProps) {
  const say = useSay('own-limits');
  const sayLimits = useSay('limits');
  switch (kind) {
    case 'product':
      return (
        <SelectField
          label={say('class-of-product')}
          choices={productClasses.map((value) => ({ value, name: sayLimits(codeOf('class', value)) }))}
          value={classOf(said)}
          error={error}
          onChange={onChange}
        />
      );
    case 'nitrite':
    case 'accelerator':
      return <NumberField label={say('at-least')} unit="ppm" decimals={3} value={said} error={error} onChange={onChange} />;
    case 'salt in water phase':
      return <NumberField label={say('at-least')} unit="%" decimals={3} value={said} error={error} onChange={onChange} />;
    default:
      return <TextField label={say('has-to-hold')} autoComplete="off" value={said} error={error} onChange={onChange} />;
  }
}

const classOf = (said: string) => productClasses.find((value) => value === said) ?? '';
