/** Begins with a capital and ends with one full stop, however it was typed. */
export function sentence(text: string): string {
  const said = text.trim().replace(/[.;,\s]+$/, '');
  const whole = said.charAt(0).toUpperCase() + said.slice(1);
  return /[!?]$/.test(whole) || !whole ? whole : `${whole}.`;
}
