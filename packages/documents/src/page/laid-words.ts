import type { Face } from './typefaces';

type Font = Face['font'];
type Run = ReturnType<Font['layout']>;

/** Words of all faces together: about ten megabytes when full. */
const mostKept = 20_000;
const kept = new Map<string, Run>();

/**
 * Laying out is half the time of a paper, so each word is laid out once. Its glyphs are its own, so no document changes
 * another.
 */
export function laidOnce(name: string, face: Font): Font['layout'] {
  const bench: Font = Object.create(face);
  return (text) => {
    const key = `${name} ${text}`;
    const run = kept.get(key) ?? bareRun(Object.assign(bench, { _glyphs: {} }).layout(text));
    if (kept.size >= mostKept) kept.clear();
    kept.set(key, run);
    return ownCopy(run);
  };
}

/** Drops the face that each glyph holds on to. */
const bareRun = ({ glyphs, positions, advanceWidth }: Run): Run => ({
  glyphs: glyphs.map(({ id, codePoints, advanceWidth: width }) => ({ id, codePoints, advanceWidth: width })),
  positions,
  advanceWidth,
});

/** pdfkit scales the given positions in place, then asks for their sum. */
function ownCopy({ glyphs, positions }: Run): Run {
  const own = positions.map((position) => ({ ...position }));
  return {
    glyphs,
    positions: own,
    get advanceWidth() {
      return own.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
    },
  };
}
