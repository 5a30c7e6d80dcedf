declare const SAYS: string

/** Read only when asked for, as most screens are. */
export const later = `later ${SAYS}`
