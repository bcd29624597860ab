import { Button } from '../../../ui/button';
import { Row, Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';

type ReasonFieldProps = { decision: 'accepted' | 'refused'; value: string; error?: string; onChange: (reason: string) => void };

/** Usual reasons to send something back, for wet hands. */
const usual = ['Too warm.', 'Packaging damaged.', 'No lot number on it.', 'Not what was ordered.'];

/** Why: a tap for the usual reasons, or words of one's own. */
export function ReasonField({ decision, value, error, onChange }: ReasonFieldProps) {
  const isRefused = decision === 'refused';
  const add = (reason: string) => onChange([value.trim(), reason].filter(Boolean).join(' '));
  return (
    <Stack gap="near">
      <TextArea
        label={isRefused ? 'Why is it refused?' : 'Why is it accepted all the same?'}
        maxLength={2000}
        value={value}
        error={error}
        onChange={onChange}
        hint={isRefused ? undefined : 'It stays recorded as missed and opens a deviation, which needs its corrective action.'}
      />
      {isRefused && (
        <Row>
          {usual
            .filter((reason) => !value.includes(reason))
            .map((reason) => (
              <Button key={reason} onClick={() => add(reason)}>
                {reason.replace('.', '')}
              </Button>
            ))}
        </Row>
      )}
    </Stack>
  );
}
