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
import { detailOf } from './detail-of';
import { limitOf } from './limit-of';
import css from './limits.module.css';
import { SourceFields } from './source-fields';
import { codedText, codeOf } from '@larderbook/messages';
import { useSay, useSpoken } from '../../../ui/voice';

type LimitDialogProps = {
  kinds: LimitKind[];
  /** Without it, one's own limit is written. */
  before?: CriticalLimit;
  onDone: (limit: CriticalLimit) => void;
  onClose: () => void;
};

/** The limit is said back as it would stand in the plan. */
export function LimitDialog({ kinds, before, onDone, onClose }: LimitDialogProps) {
  const say = useSay('limit-forms');
  const { degrees } = useShop();
  const { sayLimit } = useLimits();
  const [draft, setDraft] = useState(() => (before ? draftOfLimit(before) : emptyLimit(kinds[0] ?? 'range')));
  const [tried, setTried] = useState(false);
  const told = useSpoken('limit-forms');
  const { value, errors = {}, fault } = limitOf(draft, before);
  const shown = tried ? errors : {};
  const done = () => {
    setTried(true);
    if (value) onDone(value);
  };
  return (
    <Dialog
      title={say(before ? 'change-figures' : 'own-limit')}
      onClose={onClose}
      actions={
        <Button look="primary" onClick={done}>
          {say('take-limit')}
        </Button>
      }
    >
      <Stack>
        {!before && kinds.length > 1 && (
          <ChoiceField
            label={say('kind-of-limit')}
            choices={kinds.map((kind) => ({ value: kind, name: say(codeOf('kind', kind)), detail: say(detailOf(kind)) }))}
            value={draft.kind}
            onChange={(kind) => setDraft({ ...emptyLimit(kind), source: draft.source })}
          />
        )}
        {fieldsOfDraft({ draft, errors: shown, onChange: (next) => setDraft({ ...next, conditions: draft.conditions }) })}
        <ConditionsField conditions={draft.conditions ?? []} onChange={(conditions) => setDraft({ ...draft, conditions })} />
        <SourceFields source={draft.source} errors={shown} onChange={(source) => setDraft({ ...draft, source })} />
        {tried && !value && (
          <p className={css.fault} role="alert">
            {fault ? codedText(told, fault) : say('marked-above')}
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
