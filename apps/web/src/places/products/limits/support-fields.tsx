import { supportAsked, type CriticalLimit, type Support } from '@larderbook/haccp';
import { Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { useSay } from '../../../ui/voice';

type SupportFieldsProps = { limit: CriticalLimit; onChange: (limit: CriticalLimit) => void };

/**
 * A figure nobody has read in its source, or an option its source has left behind: without these words the plan cannot
 * be adopted.
 */
export function SupportFields({ limit, onChange }: SupportFieldsProps) {
  const say = useSay('limit-forms');
  const { figure, option } = supportAsked(limit);
  const { support = {} } = limit.source;
  const isOption = option.length > 0;
  if (!figure && !isOption) return null;
  const put = (next: Support) => onChange({ ...limit, source: { ...limit.source, support: said({ ...support, ...next }) } });
  return (
    <Stack>
      <p>{say(figure ? 'figure-not-read' : 'option-replaced')}</p>
      {figure && (
        <TextArea
          label={say('where-read')}
          hint={say('where-read-hint')}
          rows={2}
          maxLength={1000}
          value={support.read ?? ''}
          onChange={(read) => put({ read })}
        />
      )}
      {isOption && (
        <TextArea
          label={say('the-gap')}
          hint={say('the-gap-hint')}
          rows={2}
          maxLength={1000}
          value={support.gap ?? ''}
          onChange={(gap) => put({ gap })}
        />
      )}
      <TextArea
        label={say('own-support')}
        hint={say('own-support-hint')}
        rows={2}
        maxLength={1000}
        value={support.own ?? ''}
        onChange={(own) => put({ own })}
      />
    </Stack>
  );
}

/** Emptied fields are left out, and a support without fields is absent. */
function said({ read, gap, own }: Support): Support | undefined {
  const kept = { ...(read && { read }), ...(gap && { gap }), ...(own && { own }) };
  return Object.keys(kept).length > 0 ? kept : undefined;
}
