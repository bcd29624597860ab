import type { ClarificationWord } from '@larderbook/contracts';
import type { Tile } from '../../../ui/choice-field';

/** What readings can have been, as a person on the floor would say it. */
export const wordChoices: Tile<ClarificationWord>[] = [
  {
    value: 'time is right',
    name: 'Time is right',
    detail: 'They were read when they say, whatever the clock showed.',
  },
  { value: 'not of the core', name: 'Not of the core', detail: 'They stay on the sheet and count for nothing.' },
  { value: 'as recorded', name: 'As recorded', detail: 'What was said of them is taken back; they count again.' },
];
