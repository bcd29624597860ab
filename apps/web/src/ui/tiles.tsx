import type { ReactNode } from 'react';
import css from './tiles.module.css';
import { useTapGuard } from './use-tap-guard';

export type TapTile = { key: string; title: string; lines?: ReactNode[]; onTap: () => void };

/** For gloved fingers: one tap takes one and goes on. Where the choice stays open, use ChoiceField. */
export function Tiles({ label, tiles, busy = false }: { label: string; tiles: TapTile[]; busy?: boolean }) {
  return (
    <ul className={css.tiles} aria-label={label}>
      {tiles.map((tile) => (
        <Tile key={tile.key} tile={tile} busy={busy} />
      ))}
    </ul>
  );
}

function Tile({ tile: { title, lines = [], onTap }, busy }: { tile: TapTile; busy: boolean }) {
  const tap = useTapGuard<HTMLButtonElement>(busy ? undefined : onTap);
  return (
    <li>
      <button type="button" className={css.tile} aria-disabled={busy || undefined} onClick={tap}>
        <strong>{title}</strong>
        {lines.filter(Boolean).map((line, i) => (
          <small key={i}>{line}</small>
        ))}
      </button>
    </li>
  );
}
