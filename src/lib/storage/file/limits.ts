/**
 * What a survey file may be at most. A file can come from anybody, and the sizes that it states
 * about itself are not believed: bytes are counted as they come out.
 */
export const MAX_FILE_BYTES = 1024 ** 3;
export const MAX_ENTRIES = 20_000;
/** Of one entry of text (the log, the survey), unpacked. */
export const MAX_TEXT_BYTES = 64 * 1024 ** 2;
/** Of one picture, unpacked. */
export const MAX_BLOB_BYTES = 64 * 1024 ** 2;
/** Of all entries together, unpacked. */
export const MAX_TOTAL_BYTES = 1024 ** 3;
/** Unpacked to packed; our text packs ten to forty times. */
export const MAX_RATIO = 250;
/** Below this many unpacked bytes the ratio is not looked at: little harm fits in there. */
export const RATIO_FREE_BYTES = 1024 ** 2;
/** Brackets within brackets; a survey needs about ten. */
export const MAX_JSON_DEPTH = 32;
/** A logical time above this leaves no room to count on from it. */
export const MAX_LOGICAL_TIME = 1e12;
