import { chooseLanguageHere, useLanguage } from '../../../api/language';
import { useSay } from '../../../ui/voice';
import { LanguageField } from './language-field';

export function LanguageHere() {
  const say = useSay('language');
  return <LanguageField label={say('language')} value={useLanguage()} onChange={chooseLanguageHere} />;
}
