/** Some systems cut longer names. */
const most = 120;

/** Every system keeps ASCII letters, figures, dots and dashes. A part in another script is left out. */
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
