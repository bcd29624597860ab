import { processes } from '@larderbook/contracts';
import { SelectField } from '../../../ui/select-field';
import { Columns, Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { TextField } from '../../../ui/text-field';
import { processWords } from '../described/product-words';
import type { Drafting } from './with-draft';

/** What the plan is for: its title, the process, who eats the product and how. */
export function HeadFields({ content, errors, change }: Drafting) {
  return (
    <Stack>
      <Columns>
        <TextField
          label="Title"
          value={content.title}
          error={errors.title}
          maxLength={120}
          autoComplete="off"
          onChange={(title) => change({ ...content, title })}
        />
        <SelectField
          label="Process"
          choices={processes.map((value) => ({ value, name: processWords[value] }))}
          value={content.process}
          error={errors.process}
          onChange={(process) => change({ ...content, process })}
        />
      </Columns>
      <TextArea
        label="Intended use"
        hint="Who eats it, and how it is used: ready to eat, cooked again, for the general public."
        rows={2}
        value={content.intendedUse}
        error={errors.intendedUse}
        onChange={(intendedUse) => change({ ...content, intendedUse })}
      />
    </Stack>
  );
}
