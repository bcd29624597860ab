import type { Face } from './typefaces';

type Font = Face['font'];
type Run = ReturnType<Font['layout']>;

/** Words kept for the process, of all faces together: some ten megabytes when it is full. */
const mostKept = 20_000;
const kept = new Map<string, Run>();

/**
 * Lays out each word of a face once for the process, since that is half the time of a paper. Every word is laid with
 * glyphs of its own, so that which letters a glyph stands for never depends on what another document printed.
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

/** Without the face that each glyph holds on to. */
const bareRun = ({ glyphs, positions, advanceWidth }: Run): Run => ({
  glyphs: glyphs.map(({ id, codePoints, advanceWidth: width }) => ({ id, codePoints, advanceWidth: width })),
  positions,
  advanceWidth,
});

/** pdfkit scales the positions it is given in place, and asks for their sum afterwards. */
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
