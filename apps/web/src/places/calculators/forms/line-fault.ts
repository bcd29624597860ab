/** `count` is how many numbers the line should have. */
export type LineFault = {
  code: 'line-not-name-and-percent' | 'line-not-numbers' | 'line-needs-clock';
  figures: { line: number; text: string; count: number };
};

export const faultOf = (code: LineFault['code'], index: number, text: string, count = 0): LineFault => ({
  code,
  figures: { line: index + 1, text: text.slice(0, 40), count },
});
