/**
 * What this program judges by, as one number: raised whenever the same records may be judged otherwise than before, or
 * told by other codes and figures. It stands with everything that was judged, and with every review.
 */
export const RULES_VERSION = 2;
