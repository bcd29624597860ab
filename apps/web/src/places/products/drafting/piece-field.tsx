import type { ControlPoint } from '@larderbook/contracts';
import { useState } from 'react';
import type { FieldErrors } from '../../../api/check';
import { numberOf } from '../../../ui/keypad-text';
import { NumberField } from '../../../ui/number-field';
import { pieceUnits } from '@larderbook/haccp';
import { SelectField } from '../../../ui/select-field';
import limits from '../limits/limits.module.css';
import { useSay } from '../../../ui/voice';

type Piece = NonNullable<ControlPoint['piece']>;
type PieceFieldProps = {
  value: Piece | undefined;
  errors: FieldErrors;
  onChange: (value: Piece | undefined) => void;
};

type Solid = Exclude<Piece, { shape: 'stirred' }>;

const shapes = ['unsaid', 'cylinder', 'sphere', 'slab', 'stirred'] as const;
const units = { mm: 'millimetres', in: 'inches' } as const;

/** A core that moves faster than such a piece can is doubted. */
export function PieceField({ value, errors, onChange }: PieceFieldProps) {
  const say = useSay('plan-points');
  const [shape, setShape] = useState<Piece['shape'] | 'unsaid'>(value?.shape ?? 'unsaid');
  const solid = value?.shape === 'stirred' ? undefined : value;
  const [unit, setUnit] = useState(solid?.smallest.unit ?? 'mm');
  const [text, setText] = useState(() => textOf(solid));
  const change = (next: { shape?: typeof shape; unit?: typeof unit; text?: string }) => {
    const now = { shape, unit, text, ...next };
    setShape(now.shape);
    setUnit(now.unit);
    setText(now.text);
    onChange(pieceOf(now.shape, { value: numberOf(now.text) ?? NaN, unit: now.unit }));
  };
  return (
    <fieldset className={limits.group}>
      <legend className={limits.legend}>{say('piece')}</legend>
      <p className={limits.hint}>{say('piece-hint')}</p>
      <SelectField
        label={say('shape')}
        choices={shapes.map((each) => ({ value: each, name: say(`shape-${each}`) }))}
        value={shape}
        error={errors['piece.shape']}
        onChange={(chosen) => change({ shape: chosen })}
      />
      {shape !== 'unsaid' && shape !== 'stirred' && (
        <div className={limits.pair}>
          <NumberField
            label={say(shape === 'slab' ? 'thickness' : 'thinnest')}
            value={text}
            decimals={3}
            error={errors['piece.smallest.value']}
            onChange={(next) => change({ text: next })}
          />
          <SelectField
            label={say('unit')}
            choices={pieceUnits.map((each) => ({ value: each, name: say(units[each]) }))}
            value={unit}
            onChange={(chosen) => change({ unit: chosen })}
          />
        </div>
      )}
    </fieldset>
  );
}

function pieceOf(shape: Piece['shape'] | 'unsaid', smallest: Solid['smallest']): Piece | undefined {
  if (shape === 'unsaid') return undefined;
  return shape === 'stirred' ? { shape } : { shape, smallest };
}

const textOf = (piece: Solid | undefined): string => (piece && Number.isFinite(piece.smallest.value) ? String(piece.smallest.value) : '');
