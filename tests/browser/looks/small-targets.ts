/**
 * Runs in the page. Whatever is tapped is at least 48 px high, for wet and gloved hands; a link in running text at
 * least 24 px (WCAG 2.2, 2.5.8). A radio button or a checkbox is tapped by its label.
 */
export function smallTargets(): string[] {
  const isInline = (element: Element) => element.tagName === 'A' && getComputedStyle(element).display === 'inline';
  const isInSight = (element: Element) => element.checkVisibility({ opacityProperty: true, visibilityProperty: true });
  const isDrawn = ({ width, height, right, bottom }: DOMRect) => width > 1 && height > 1 && right > 0 && bottom > 0;
  const tapped = (element: Element) => {
    const isTicked = element instanceof HTMLInputElement && ['radio', 'checkbox'].includes(element.type);
    return isTicked ? (element.closest('label') ?? element.labels?.[0] ?? element) : element;
  };
  const heightOf = (element: Element) =>
    isInline(element) ? parseFloat(getComputedStyle(element).lineHeight) : element.getBoundingClientRect().height;

  const root = document.querySelector('dialog[open]') ?? document;
  return [...root.querySelectorAll('a[href], button, input, select, textarea, summary, [role=button]')]
    .map(tapped)
    .filter((element) => isInSight(element) && isDrawn(element.getBoundingClientRect()))
    .filter((element) => heightOf(element) < (isInline(element) ? 24 : 48) - 0.5)
    .map((element) => `${Math.round(heightOf(element))} px high: <${element.localName}> ${element.textContent?.trim()}`);
}
