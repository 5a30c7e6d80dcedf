import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { lazy, Suspense, useEffect, useState, useSyncExternalStore } from 'react'
import { Link, Route, Switch, useLocation } from 'wouter'
import { Boundary } from '../parts/boundary.tsx'
import { RedStops } from '../screens/findings/red-stops.tsx'
import { StopButton } from '../screens/findings/stop-button.tsx'
import { SurveyScreen } from '../screens/survey/survey-screen.tsx'
import { DraftProvider, useAskedDraft } from '../screens/survey/use-draft.ts'
import { useDocument } from '../screens/survey/use-survey.ts'
import type { JobStore } from '../store/job-store.ts'
import { isTyping, subscribeTyped } from '../store/typed.ts'
import { JobProvider, useApp, useJob, useJobView, useWeb } from './context.ts'
import { Frame, Screen, Working } from './frame.tsx'

const MatchScreen = lazy(async () => ({
  default: (await import('../screens/match/match-screen.tsx')).MatchScreen,
}))
const SupplyScreen = lazy(async () => ({
  default: (await import('../screens/supply/supply-screen.tsx')).SupplyScreen,
}))
const WiringScreen = lazy(async () => ({
  default: (await import('../screens/wiring/wiring-screen.tsx')).WiringScreen,
}))
const FindingsScreen = lazy(async () => ({
  default: (await import('../screens/findings/findings-screen.tsx')).FindingsScreen,
}))
const SheetScreen = lazy(async () => ({
  default: (await import('../screens/sheet/sheet-screen.tsx')).SheetScreen,
}))

type Opened = { readonly id: string; readonly job: JobStore | undefined }

/** The screens of one job, with the job open. */
export function JobRoutes({ id }: { readonly id: string }): ReactNode {
  const { space } = useApp()
  const web = useWeb()
  const [opened, setOpened] = useState<Opened>()
  useEffect(() => {
    let isWanted = true
    void space.job(id).then(job => isWanted && setOpened({ id, job }))
    return () => {
      isWanted = false
    }
  }, [space, id])
  if (!opened)
    return (
      <Frame>
        <Screen heading={web.loading}>
          <Working />
        </Screen>
      </Frame>
    )
  if (!opened.job)
    return (
      <Frame>
        <Screen heading={web['shell.unknown-job']}>
          <Link className="button" href="/">
            {web['shell.jobs']}
          </Link>
        </Screen>
      </Frame>
    )
  return (
    <JobProvider value={opened.job}>
      <WithDraft>
        <JobFrame id={id} />
      </WithDraft>
    </JobProvider>
  )
}

/** The survey as the core reads it, for every screen of the job. */
function WithDraft({ children }: { readonly children: ReactNode }): ReactNode {
  return <DraftProvider value={useAskedDraft()}>{children}</DraftProvider>
}

const STEPS = ['survey', 'supply', 'match', 'wiring', 'findings', 'sheet'] as const

function JobFrame({ id }: { readonly id: string }): ReactNode {
  const web = useWeb()
  const job = useJob()
  const [place] = useLocation()
  const document = useDocument()
  const title = typeof document['title'] === 'string' ? document['title'] : web['jobs.untitled']
  useEffect(() => void job.leaveAt(place), [job, place])
  return (
    <Frame title={title} status={<SavedMark />} stop={<StopButton />} hasSteps>
      <nav className="steps" aria-label={web['shell.steps']}>
        <ol>
          {STEPS.map(step => (
            <li key={step}>
              <Link
                href={`/job/${id}/${step}`}
                aria-current={place.startsWith(`/job/${id}/${step}`) ? 'page' : undefined}
              >
                {web[`shell.${step}`]}
              </Link>
            </li>
          ))}
        </ol>
      </nav>
      <RedStops>
        <Boundary of={place} instead={detail => <Broken detail={detail} />}>
          <Suspense fallback={<Working />}>
            <Switch>
              <Route path="/job/:id/supply" component={SupplyScreen} />
              <Route path="/job/:id/match" component={MatchScreen} />
              <Route path="/job/:id/wiring/:panel?">
                {({ panel }) => <WiringScreen panel={panel} />}
              </Route>
              <Route path="/job/:id/findings" component={FindingsScreen} />
              <Route path="/job/:id/sheet" component={SheetScreen} />
              <Route path="/job/:id/survey/:group/:field">
                {({ group, field }) => <SurveyScreen group={group} field={field} />}
              </Route>
              <Route path="/job/:id/survey/:group?">
                {({ group }) => <SurveyScreen group={group} />}
              </Route>
              <Route>
                <SurveyScreen group={undefined} />
              </Route>
            </Switch>
          </Suspense>
        </Boundary>
      </RedStops>
    </Frame>
  )
}

/** A screen that could not be drawn: the frame with its stop, and the other screens, go on. */
function Broken({ detail }: { readonly detail: string }): ReactNode {
  const web = useWeb()
  return (
    <Screen heading={web['shell.fault-title']}>
      <p role="alert">{say(web['shell.fault'], { detail })}</p>
    </Screen>
  )
}

/** Whether everything that was entered is on the disk. */
function SavedMark(): ReactNode {
  const web = useWeb()
  const job = useJob()
  const { unsaved, failure, saved } = useJobView()
  const isUnkept = useSyncExternalStore(subscribeTyped, isTyping)
  if (failure !== undefined)
    return (
      <p className="saved" data-state="failed" role="alert">
        {say(web['shell.not-saved'], { why: failure })}{' '}
        <button type="button" onClick={() => void job.retry().catch(() => undefined)}>
          {web['shell.retry']}
        </button>
      </p>
    )
  if (isUnkept)
    return (
      <p className="saved" data-state="typing" data-saved={saved}>
        {web['shell.typing']}
      </p>
    )
  return (
    <p className="saved" data-state={unsaved > 0 ? 'saving' : 'saved'} data-saved={saved}>
      {unsaved > 0 ? web['shell.saving'] : web['shell.saved']}
    </p>
  )
}
