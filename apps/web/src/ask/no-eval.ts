import { config } from 'zod/v4/core'

/** The page may not make code of texts: schemas are walked, not compiled. To be imported first. */
config({ jitless: true })
