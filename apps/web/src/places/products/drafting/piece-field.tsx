import type { ControlPoint } from '@larderbook/contracts';
import { useState } from 'react';
import type { FieldErrors } from '../../../api/check';
import { numberOf } from '../../../ui/keypad-text';
import { NumberField } from '../../../ui/number-field';
import { SelectField, type Choice } from '../../../ui/select-field';
import limits from '../limits/limits.module.css';

type Piece = NonNullable<ControlPoint['piece']>;
type PieceFieldProps = {
  value: Piece | undefined;
  errors: FieldErrors;
  onChange: (value: Piece | undefined) => void;
};

type Solid = Exclude<Piece, { shape: 'stirred' }>;

const shapes: Choice<Piece['shape'] | 'unsaid'>[] = [
  { value: 'unsaid', name: 'Not said: the thinnest usual one' },
  { value: 'cylinder', name: 'Round and long: sausage, log' },
  { value: 'sphere', name: 'Round: ham, whole bird' },
  { value: 'slab', name: 'Flat: belly, patty, tray' },
  { value: 'stirred', name: 'Stirred or pumped: no core' },
];
const units: Choice<Solid['smallest']['unit']>[] = [
  { value: 'mm', name: 'millimetres' },
  { value: 'in', name: 'inches' },
];

/** The piece whose core is read. A core that moves faster than such a piece can is doubted. */
export function PieceField({ value, errors, onChange }: PieceFieldProps) {
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
      <legend className={limits.legend}>The piece whose core is read</legend>
      <p className={limits.hint}>
        A core that rises or falls faster than such a piece can was not read in the core: nothing is met by it until somebody says which
        readings were not. Take the thinnest that you make. Say “stirred or pumped” only of what flows, or is heated by steam blown into it:
        none of its readings is doubted for its speed.
      </p>
      <SelectField
        label="Shape"
        choices={shapes}
        value={shape}
        error={errors['piece.shape']}
        onChange={(chosen) => change({ shape: chosen })}
      />
      {shape !== 'unsaid' && shape !== 'stirred' && (
        <div className={limits.pair}>
          <NumberField
            label={shape === 'slab' ? 'Thickness' : 'Thickness where it is thinnest'}
            value={text}
            decimals={3}
            error={errors['piece.smallest.value']}
            onChange={(next) => change({ text: next })}
          />
          <SelectField label="Unit" choices={units} value={unit} onChange={(chosen) => change({ unit: chosen })} />
        </div>
      )}
    </fieldset>
  );
}

function pieceOf(shape: Piece['shape'] | 'unsaid', smallest: Solid['smallest']): Piece | undefined {
  if (shape === 'unsaid') return undefined;
  return shape === 'stirred' ? { shape } : { shape, smallest };
}

/** A draft kept without a number has none when it is opened again. */
const textOf = (piece: Solid | undefined): string => (piece && Number.isFinite(piece.smallest.value) ? String(piece.smallest.value) : '');
