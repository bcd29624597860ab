import type { ReactNode } from 'react';
import css from './tiles.module.css';
import { useTapGuard } from './use-tap-guard';

export type TapTile = { key: string; title: string; lines?: ReactNode[]; onTap: () => void };

/** For gloved fingers: one tap takes one and goes on. Where the choice stays open, use ChoiceField. */
export function Tiles({ label, tiles }: { label: string; tiles: TapTile[] }) {
  return (
    <ul className={css.tiles} aria-label={label}>
      {tiles.map((tile) => (
        <Tile key={tile.key} tile={tile} />
      ))}
    </ul>
  );
}

function Tile({ tile: { title, lines = [], onTap } }: { tile: TapTile }) {
  const tap = useTapGuard<HTMLButtonElement>(onTap);
  return (
    <li>
      <button type="button" className={css.tile} onClick={tap}>
        <strong>{title}</strong>
        {lines.filter(Boolean).map((line, i) => (
          <small key={i}>{line}</small>
        ))}
      </button>
    </li>
  );
}
