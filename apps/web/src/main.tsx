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
