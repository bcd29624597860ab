import { Button } from '../../../ui/button';
import { Row, Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { useSay } from '../../../ui/voice';

type ReasonFieldProps = { decision: 'accepted' | 'refused'; value: string; error?: string; onChange: (reason: string) => void };

/** Usual reasons are tapped, for wet hands. */
const usual = ['too-warm', 'packaging-damaged', 'no-lot-number', 'not-ordered'] as const;

export function ReasonField({ decision, value, error, onChange }: ReasonFieldProps) {
  const say = useSay('receiving');
  const isRefused = decision === 'refused';
  const reasons = usual.map((code) => ({ name: say(code), sentence: say('a-reason', { reason: say(code) }) }));
  const add = (reason: string) => onChange([value.trim(), reason].filter(Boolean).join(' '));
  return (
    <Stack gap="near">
      <TextArea
        label={say(isRefused ? 'why-refused' : 'why-accepted')}
        maxLength={2000}
        value={value}
        error={error}
        onChange={onChange}
        hint={isRefused ? undefined : say('stays-missed')}
      />
      {isRefused && (
        <Row>
          {reasons
            .filter(({ sentence }) => !value.includes(sentence))
            .map(({ name, sentence }) => (
              <Button key={name} onClick={() => add(sentence)}>
                {name}
              </Button>
            ))}
        </Row>
      )}
    </Stack>
  );
}
