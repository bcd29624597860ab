import { useEffect } from 'react';

/**
 * A browser proposes the window's title as the name of the printed file. The parts stand as in the server's files:
 * product, what it is, day.
 */
export function useNameOnPaper(...parts: readonly string[]): void {
  const name = parts
    .filter(Boolean)
    .join(' ')
    .replace(/[\\/:*?"<>|]/g, '-');
  useEffect(() => {
    let onScreen: string | undefined;
    const print = () => {
      onScreen ??= document.title;
      document.title = name;
    };
    const printed = () => {
      if (onScreen !== undefined) document.title = onScreen;
      onScreen = undefined;
    };
    addEventListener('beforeprint', print);
    addEventListener('afterprint', printed);
    return () => {
      printed();
      removeEventListener('beforeprint', print);
      removeEventListener('afterprint', printed);
    };
  }, [name]);
}
