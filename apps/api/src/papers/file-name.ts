/** Longer names are cut by some systems when a file is copied. */
const most = 120;

/**
 * A name that every system keeps as it is: ASCII letters, figures, dots and dashes. Accents are left out; of a name in
 * another script nothing is left, and the other parts stand alone.
 */
export function fileName(parts: readonly string[]): string {
  const plain = parts.map((part) =>
    part
      .normalize('NFKD')
      .replace(/[\u0300-\u036f’']/g, '')
      .replace(/[^A-Za-z0-9.]+/g, '-')
      .replace(/^[-.]+|[-.]+$/g, ''),
  );
  return (
    plain
      .filter(Boolean)
      .join('-')
      .slice(0, most)
      .replace(/[-.]+$/, '') || 'paper'
  );
}
