import css from './sentences.module.css';

export function Sentences({ said }: { said: string[] }) {
  if (said.length === 0) return null;
  return (
    <ul className={css.sentences}>
      {said.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}
