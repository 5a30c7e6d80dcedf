import type { ReactNode } from 'react'
import { useState } from 'react'
import { useApp, useRole, useWeb } from '../../app/context.ts'
import { Sure } from '../../parts/sure.tsx'
import { DemoTubs } from './demo-tubs.tsx'

/** The way to the demo shop, or what can be done in it. */
export function DemoShop({ isDemo }: { readonly isDemo: boolean }): ReactNode {
  const { goTo, space } = useApp()
  const web = useWeb()
  const role = useRole()
  const [asks, setAsks] = useState(false)
  const reset = async (): Promise<void> => {
    await space.wipe()
    location.reload()
  }
  if (!isDemo)
    return (
      <section className="card">
        <h2>{web['jobs.demo']}</h2>
        <p>{web['jobs.demo-help']}</p>
        <button type="button" onClick={() => goTo('demo')}>
          {web['jobs.demo']}
        </button>
      </section>
    )
  return (
    <section className="card">
      <h2>{web['jobs.demo']}</h2>
      <DemoTubs />
      <button type="button" disabled={role === 'follows'} onClick={() => setAsks(true)}>
        {web['jobs.demo-reset']}
      </button>
      {asks && (
        <Sure
          question={web['jobs.demo-reset-sure']}
          yes={web['jobs.demo-reset']}
          answer={isSure => {
            setAsks(false)
            if (isSure) void reset()
          }}
        />
      )}
    </section>
  )
}
