import { languages, type Language } from '@larderbook/messages';
import { SelectField, type Choice } from '../../../ui/select-field';

const choices = Object.entries(languages).map(([value, name]) => ({ value, name })) as Choice<Language>[];

type LanguageFieldProps = {
  label: string;
  placeholder?: string;
  hint?: string;
  value: Language | '';
  onChange: (language: Language) => void;
};

/** Each language is named in itself: who cannot read the present one finds their own. */
export function LanguageField({ placeholder, ...rest }: LanguageFieldProps) {
  return <SelectField placeholder={placeholder ?? rest.label} choices={choices} {...rest} />;
}
