import './ask/no-eval.ts'
import { createRoot } from 'react-dom/client'
import { AppState } from './app/app.tsx'
import { Routes } from './app/routes.tsx'
import { startOffline } from './offline/index.ts'
import './style/app.css'

// A newer version that waits takes over before anything is shown that it could take away.
await startOffline()

const root = document.getElementById('app')
if (root)
  createRoot(root).render(
    <AppState>
      <Routes />
    </AppState>,
  )

/** Longer than any start we have seen [ms]. */
const PATIENCE = 8000
const AGAIN = 'tubwright-begun-again'

// After a browser was killed a start has been seen to hang with nothing shown: it is begun again, once.
setTimeout(() => {
  if (root?.textContent) sessionStorage.removeItem(AGAIN)
  else if (sessionStorage.getItem(AGAIN) === null) {
    sessionStorage.setItem(AGAIN, 'yes')
    location.reload()
  }
}, PATIENCE)
