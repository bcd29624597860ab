import { supportAsked, type CriticalLimit, type Support } from '@larderbook/haccp';
import { Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';

type SupportFieldsProps = { limit: CriticalLimit; onChange: (limit: CriticalLimit) => void };

/**
 * What the plan says of a figure that nobody has read in its source, or of an option that its source has left behind;
 * without it the plan cannot be adopted. Nothing is asked where the figure needs no words.
 */
export function SupportFields({ limit, onChange }: SupportFieldsProps) {
  const { figure, option } = supportAsked(limit);
  const { support = {} } = limit.source;
  const isOption = option.length > 0;
  if (!figure && !isOption) return null;
  const put = (next: Support) => onChange({ ...limit, source: { ...limit.source, support: said({ ...support, ...next }) } });
  return (
    <Stack>
      <p>
        {figure ? 'Nobody here has read this figure in its source. ' : 'The edition this option stands in has been replaced. '}
        One of these is needed before the plan can be adopted; it is printed with the limit.
      </p>
      {figure && (
        <TextArea
          label="Where you have read the figure"
          hint="Edition and page. Open the source and compare it first."
          rows={2}
          maxLength={1000}
          value={support.read ?? ''}
          onChange={(read) => put({ read })}
        />
      )}
      {isOption && (
        <TextArea
          label="The gap your product stands in"
          hint="The scientific gap of the 2021 guideline, with its page."
          rows={2}
          maxLength={1000}
          value={support.gap ?? ''}
          onChange={(gap) => put({ gap })}
        />
      )}
      <TextArea
        label="Your own support"
        hint="What it is, such as a study or a letter of a process authority, and where it is filed."
        rows={2}
        maxLength={1000}
        value={support.own ?? ''}
        onChange={(own) => put({ own })}
      />
    </Stack>
  );
}

/** Emptied fields say nothing, and nothing said at all is absent. */
function said({ read, gap, own }: Support): Support | undefined {
  const kept = { ...(read && { read }), ...(gap && { gap }), ...(own && { own }) };
  return Object.keys(kept).length > 0 ? kept : undefined;
}
