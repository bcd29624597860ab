import { languages, type Language } from '@larderbook/messages';
import { chooseLanguage, useLanguage } from '../../../api/language';
import { SelectField, type Choice } from '../../../ui/select-field';
import { useSay } from '../../../ui/voice';

const choices = Object.entries(languages).map(([value, name]) => ({ value, name })) as Choice<Language>[];

/** In which language this device speaks. Each is named in itself: who cannot read the present one finds their own. */
export function LanguageChoice() {
  const say = useSay('sign-in');
  return (
    <SelectField label={say('language')} placeholder={say('language')} choices={choices} value={useLanguage()} onChange={chooseLanguage} />
  );
}
