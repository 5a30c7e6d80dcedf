/** Steps of a path, 1 to this. */
export const STEPS_MAX = 32
/** Characters of one step, 1 to this. */
export const STEP_MAX = 128
/** Bytes of one value as canonical UTF-8. */
export const VALUE_BYTES_MAX = 64 * 1024
/** Bytes of one whole entry as canonical UTF-8. */
export const ENTRY_BYTES_MAX = 160 * 1024
/** Lists and objects inside each other in one value. */
export const VALUE_DEPTH_MAX = 40
/** The same in one whole entry: newer versions may nest deeper than a value of this one. */
export const ENTRY_DEPTH_MAX = 48
/** Levels around an entry in a wire text or a file: an object and its list. */
export const AROUND_ENTRY = 2
/** Characters of a store's name, 1 to this. */
export const STORE_MAX = 64
/** Stores that one entry may name. */
export const STORES_MAX = 1024
/** Characters of an author, 1 to this. */
export const AUTHOR_MAX = 120
/** The greatest counter; the least is 1. */
export const COUNTER_MAX = Number.MAX_SAFE_INTEGER
