/**
 * Raised whenever the same records may be judged otherwise, or told by other codes and figures. It stands with
 * everything judged, and with every review.
 */
export const RULES_VERSION = 3;
