/**
 * Runs in the page. A text that is cut off, or runs out of the box it stands in; what a drawing holds is measured by the
 * drawing itself, and a table may scroll in its own frame.
 */
export function cutTexts(): string[] {
  const root = document.querySelector('dialog[open]') ?? document.body;
  const isForEars = ({ width, height }: DOMRect) => width <= 1 || height <= 1;
  const hasText = (element: Element) => [...element.childNodes].some(({ nodeType, textContent }) => nodeType === 3 && textContent?.trim());
  const isIn = (element: Element) => element.checkVisibility({ opacityProperty: true, visibilityProperty: true });
  const boxOf = (element: Element): Element =>
    getComputedStyle(element).display === 'inline' && element.parentElement ? boxOf(element.parentElement) : element;

  const faultOf = (element: Element): string | undefined => {
    const box = boxOf(element);
    const bounds = box.getBoundingClientRect();
    if (isForEars(bounds) || isForEars(element.getBoundingClientRect())) return undefined;
    const range = document.createRange();
    range.selectNodeContents(element);
    const text = range.getBoundingClientRect();
    const over = Math.round(Math.max(text.right - bounds.right, bounds.left - text.left));
    return over > 1 ? `${over} px cut of <${box.localName}> ${element.textContent?.trim().slice(0, 60)}` : undefined;
  };
  return [...root.querySelectorAll('*')]
    .filter((element) => !element.closest('svg, textarea, option, script, style') && hasText(element) && isIn(element))
    .flatMap((element) => faultOf(element) ?? []);
}
