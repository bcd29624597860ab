import type { ReactNode } from 'react';
import css from './keypad.module.css';
import type { UnitChoice } from './plausible';
import { useFigures, useSay } from './voice';

type KeypadBesideProps = { id: string; limit?: ReactNode; previous?: ReactNode; usual?: UnitChoice };

export function KeypadBeside({ id, limit, previous, usual }: KeypadBesideProps) {
  const say = useSay('recording');
  const sayShared = useSay('shared');
  const { number } = useFigures();
  return (
    <dl className={css.beside} id={id}>
      {limit && (
        <div>
          <dt>{sayShared('limit')}</dt>
          <dd>{limit}</dd>
        </div>
      )}
      {previous && (
        <div>
          <dt>{say('before')}</dt>
          <dd>{previous}</dd>
        </div>
      )}
      {usual && (
        <div>
          <dt>{say('usual')}</dt>
          <dd>{say('usual-range', { least: number(usual.least), most: number(usual.most), unit: usual.unit })}</dd>
        </div>
      )}
    </dl>
  );
}
