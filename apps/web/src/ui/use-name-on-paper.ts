import { useEffect } from 'react';

/**
 * What this page is called when it is printed: a browser proposes the window's title as the name of the file. The parts
 * stand as in the files that the server prints: product, what it is, day.
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
