import { processes } from '@larderbook/contracts';
import { SelectField } from '../../../ui/select-field';
import { Columns, Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { TextField } from '../../../ui/text-field';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../ui/voice';
import type { Drafting } from './with-draft';

export function HeadFields({ content, errors, change }: Drafting) {
  const say = useSay('plan-drafts');
  const sayProduct = useSay('products');
  return (
    <Stack>
      <Columns>
        <TextField
          label={say('title')}
          value={content.title}
          error={errors.title}
          maxLength={120}
          autoComplete="off"
          onChange={(title) => change({ ...content, title })}
        />
        <SelectField
          label={say('process')}
          choices={processes.map((value) => ({ value, name: sayProduct(codeOf('process', value)) }))}
          value={content.process}
          error={errors.process}
          onChange={(process) => change({ ...content, process })}
        />
      </Columns>
      <TextArea
        label={say('intended-use')}
        hint={say('intended-hint')}
        rows={2}
        value={content.intendedUse}
        error={errors.intendedUse}
        onChange={(intendedUse) => change({ ...content, intendedUse })}
      />
    </Stack>
  );
}
