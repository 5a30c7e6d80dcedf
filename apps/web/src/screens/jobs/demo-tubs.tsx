import type { ReactNode } from 'react'
import { useEffect, useState } from 'react'
import { useLocation } from 'wouter'
import { useApp, useRole, useWeb } from '../../app/context.ts'

interface Tub {
  readonly id: string
  readonly title: string
  readonly text: string
}

/** Begins a job with one of the invented tubs. */
export function DemoTubs(): ReactNode {
  const { space, core } = useApp()
  const web = useWeb()
  const role = useRole()
  const [, go] = useLocation()
  const [tubs, setTubs] = useState<readonly Tub[]>([])
  useEffect(() => {
    void import('../../app/demo-tubs.ts').then(found => setTubs(found.TUBS))
  }, [])
  const [chosen, setChosen] = useState('')
  const begin = async (id: string): Promise<void> => {
    const tub = tubs.find(each => each.id === id)
    if (!tub) return
    const { document } = await core.ask('readYaml', { text: tub.text })
    if (!document) return
    const { actsOfSurvey } = await import('../survey/first-acts.ts')
    const job = await space.newJob(actsOfSurvey(document))
    go(`/job/${job.id}/survey`)
  }
  return (
    <p className="with-button">
      <label className="label" htmlFor="demo-tub">
        {web['jobs.demo-tub']}
      </label>
      <select
        id="demo-tub"
        value={chosen}
        disabled={role === 'follows'}
        onChange={event => setChosen(event.target.value)}
      >
        <option value="" />
        {tubs.map(each => (
          <option key={each.id} value={each.id}>
            {each.title}
          </option>
        ))}
      </select>{' '}
      <button
        type="button"
        disabled={chosen === '' || role === 'follows'}
        onClick={() => void begin(chosen)}
      >
        {web['jobs.begin']}
      </button>
    </p>
  )
}
