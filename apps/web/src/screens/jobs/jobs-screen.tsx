import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useState, useSyncExternalStore } from 'react'
import { Link, useLocation } from 'wouter'
import { useApp, useRole, useWeb } from '../../app/context.ts'
import { Frame, Screen } from '../../app/frame.tsx'
import type { JobCard } from '../../store/database.ts'
import { DemoShop } from './demo-shop.tsx'
import { OpenFile } from './open-file.tsx'

function useCards(): readonly JobCard[] {
  const { space } = useApp()
  return useSyncExternalStore(space.subscribe, () => space.cards)
}

const fits = ({ title }: JobCard, words: string): boolean =>
  words
    .toLocaleLowerCase()
    .split(/\s+/u)
    .every(word => title.toLocaleLowerCase().includes(word))

/** Every job of this space, the last one first. */
export function JobsScreen(): ReactNode {
  const { space, language } = useApp()
  const web = useWeb()
  const cards = useCards()
  const [wanted, setWanted] = useState('')
  const shown = cards.filter(each => fits(each, wanted))
  return (
    <Frame>
      <Screen heading={web['jobs.title']}>
        <p className="row">
          <NewJob />
          <OpenFile />
        </p>
        {cards.length > 3 && (
          <p>
            <label className="label" htmlFor="job-search">
              {web['jobs.search']}
            </label>
            <input
              id="job-search"
              type="search"
              value={wanted}
              onChange={event => setWanted(event.target.value)}
            />
          </p>
        )}
        {cards.length === 0 && <p>{web['jobs.none']}</p>}
        {cards.length > 0 && shown.length === 0 && <p>{web['jobs.none-found']}</p>}
        <ul className="plain">
          {shown.map(card => (
            <li key={card.id}>
              <Link className="card" href={card.place || `/job/${card.id}/survey`}>
                <span className="title">{card.title || web['jobs.untitled']}</span>
                <br />
                {card.isStopped && (
                  <>
                    <span className="stopped">{web['jobs.stopped']}</span>
                    <br />
                  </>
                )}
                <span className="quiet">
                  {say(web['jobs.entries'], {
                    entries: String(card.entries),
                    at: card.at ? new Date(card.at).toLocaleString(language) : '–',
                  })}
                </span>
              </Link>
            </li>
          ))}
        </ul>
        <DemoShop isDemo={space.space === 'demo'} />
        <p className="quiet">{web['shell.authority']}</p>
      </Screen>
    </Frame>
  )
}

function NewJob(): ReactNode {
  const { space, language } = useApp()
  const web = useWeb()
  const role = useRole()
  const [, go] = useLocation()
  const [isBusy, setIsBusy] = useState(false)
  const make = async (): Promise<void> => {
    setIsBusy(true)
    const { firstActs } = await import('../survey/first-acts.ts')
    const date = new Date().toLocaleDateString(language)
    const job = await space.newJob(firstActs(say(web['jobs.default-title'], { date })))
    go(`/job/${job.id}/survey`)
  }
  return (
    <button
      type="button"
      className="main"
      disabled={isBusy || role === 'follows'}
      onClick={() => void make()}
    >
      {web['jobs.new']}
    </button>
  )
}
