import { chooseLanguageHere, useLanguage } from '../../../api/language';
import { useSay } from '../../../ui/voice';
import { LanguageField } from './language-field';

/** In which language this device speaks to whoever has not signed in. */
export function LanguageHere() {
  const say = useSay('language');
  return <LanguageField label={say('language')} value={useLanguage()} onChange={chooseLanguageHere} />;
}
