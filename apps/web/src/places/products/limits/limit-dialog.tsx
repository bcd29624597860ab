import type { CriticalLimit, LimitKind } from '@larderbook/haccp';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { ChoiceField } from '../../../ui/choice-field';
import { Dialog } from '../../../ui/dialog';
import { Stack } from '../../../ui/stack';
import { useLimits } from '../../../ui/use-tell';
import { useShop } from '../../../api/use-shop';
import { ConditionsField } from './conditions-field';
import { fieldsOfDraft } from './fields-of-draft';
import { draftOfLimit, emptyLimit } from './limit-draft';
import { limitKindWords } from './limit-kinds';
import { limitOf } from './limit-of';
import css from './limits.module.css';
import { SourceFields } from './source-fields';

type LimitDialogProps = {
  /** Kinds that can be judged from what is recorded here. */
  kinds: LimitKind[];
  /** The limit whose figures are changed; without it, one's own is written. */
  before?: CriticalLimit;
  onDone: (limit: CriticalLimit) => void;
  onClose: () => void;
};

/** A limit in one's own figures, with the source they come from; said back as it would stand in the plan. */
export function LimitDialog({ kinds, before, onDone, onClose }: LimitDialogProps) {
  const { degrees } = useShop();
  const { sayLimit } = useLimits();
  const [draft, setDraft] = useState(() => (before ? draftOfLimit(before) : emptyLimit(kinds[0] ?? 'range')));
  const [tried, setTried] = useState(false);
  const { value, errors = {} } = limitOf(draft, before);
  const shown = tried ? errors : {};
  const done = () => {
    setTried(true);
    if (value) onDone(value);
  };
  return (
    <Dialog
      title={before ? 'Change the figures' : 'A limit of your own'}
      closeLabel="Leave it"
      onClose={onClose}
      actions={
        <Button look="primary" onClick={done}>
          Take this limit
        </Button>
      }
    >
      <Stack>
        {!before && kinds.length > 1 && (
          <ChoiceField
            label="Kind of limit"
            choices={kinds.map((kind) => ({ value: kind, ...limitKindWords[kind] }))}
            value={draft.kind}
            onChange={(kind) => setDraft({ ...emptyLimit(kind), source: draft.source })}
          />
        )}
        {fieldsOfDraft({ draft, errors: shown, onChange: (next) => setDraft({ ...next, conditions: draft.conditions }) })}
        <ConditionsField conditions={draft.conditions ?? []} onChange={(conditions) => setDraft({ ...draft, conditions })} />
        <SourceFields source={draft.source} errors={shown} onChange={(source) => setDraft({ ...draft, source })} />
        {shown.limit && (
          <p className={css.fault} role="alert">
            {shown.limit}
          </p>
        )}
        {tried && !value && !shown.limit && (
          <p className={css.fault} role="alert">
            Something is missing above: it is marked beside its field.
          </p>
        )}
        {value && (
          <p className={css.said} role="status">
            {sayLimit(value, degrees)}
          </p>
        )}
      </Stack>
    </Dialog>
  );
}
