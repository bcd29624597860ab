import type { ReactNode } from 'react';
import css from './stack.module.css';

type Gap = 'tight' | 'near' | 'usual' | 'wide';
type StackProps = { gap?: Gap; children: ReactNode };

export function Stack({ gap = 'usual', children }: StackProps) {
  return <div className={`${css.stack} ${css[gap]}`}>{children}</div>;
}

/** Blocks side by side that wrap; `spread` pushes them to both edges. */
export function Row({ gap = 'near', spread = false, children }: StackProps & { spread?: boolean }) {
  return <div className={`${css.row} ${css[gap]} ${spread ? css.spread : ''}`}>{children}</div>;
}

/** As many equal columns as fit at `least` rem each. */
export function Columns({ least = 18, gap = 'usual', children }: StackProps & { least?: number }) {
  const gridTemplateColumns = `repeat(auto-fit, minmax(min(${least}rem, 100%), 1fr))`;
  return (
    <div className={`${css.columns} ${css[gap]}`} style={{ gridTemplateColumns }}>
      {children}
    </div>
  );
}
