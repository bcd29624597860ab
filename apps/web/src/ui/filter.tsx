import css from './filter.module.css';

type FilterProps<V extends string> = {
  /** Read out before the choices: "Show lots that are". */
  label: string;
  choices: { value: V; name: string }[];
  chosen: V;
  onChoose: (value: V) => void;
};

export function Filter<V extends string>({ label, choices, chosen, onChoose }: FilterProps<V>) {
  return (
    <div className={css.filter} role="group" aria-label={label}>
      {choices.map(({ value, name }) => (
        <button key={value} type="button" className={css.choice} aria-pressed={value === chosen} onClick={() => onChoose(value)}>
          {name}
        </button>
      ))}
    </div>
  );
}
