import { holdUpdates, startOffline } from '../../../src/offline/index.ts'

/** Written in by the test's build: two builds differ in it. */
declare const SAYS: string

await startOffline()
const says = document.getElementById('says')
if (says) says.textContent = SAYS
Object.assign(window, { holdUpdates, later: () => import('./later.ts') })
