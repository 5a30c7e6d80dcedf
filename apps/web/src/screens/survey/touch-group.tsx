import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useApp, useJob, useJobView, useWeb } from '../../app/context.ts'
import { Signal } from '../../parts/signal.tsx'
import { RAISED, stopActs } from '../../store/stops.ts'
import { Field } from './field.tsx'
import type { Item } from './items.tsx'
import { addActs, TakeOut, useFreeId } from './items.tsx'
import { MeterGate } from './meter-gate.tsx'
import { useSurvey } from './use-survey.ts'

const READINGS = ['touch', 'readings']

/** What was felt at the tub, and what a meter shows between things that a person touches at once. */
export function TouchGroup(): ReactNode {
  const web = useWeb()
  const { value } = useSurvey()
  const written = value(READINGS)
  const readings = Array.isArray(written) ? (written as readonly Item[]) : []
  return (
    <>
      <Field
        path={['touch', 'felt']}
        label={web['survey.touch-felt']}
        hint={web['survey.touch-felt-hint']}
      />
      {value(['touch', 'felt']) === 'yes' && <Felt />}
      <h2>{web['survey.touch-volts-between']}</h2>
      <p>{web['survey.touch-why']}</p>
      <MeterGate
        caution={web['survey.touch-caution']}
        leave={web['survey.touch-leave']}
        isTaken={readings.length > 0}
      >
        <Readings readings={readings} />
      </MeterGate>
    </>
  )
}

/** A shock is what the stop is there for. */
function Felt(): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const job = useJob()
  const { state } = useJobView()
  const { canWrite } = useSurvey()
  const stop = (): void => {
    void job.append(...stopActs(state, 'shock', RAISED)).catch(() => undefined)
  }
  return (
    <div className="conflict" role="alert">
      <p>
        <Signal severity="danger" />
        {web['stop.do-shock']}
        {words.hasUnreviewed && <em> ({words.unreviewedMark})</em>}
      </p>
      <button type="button" className="stop" disabled={!canWrite} onClick={stop}>
        {web['survey.touch-stop']}
      </button>
    </div>
  )
}

function Readings({ readings }: { readonly readings: readonly Item[] }): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const freeName = useFreeId()
  return (
    <section data-field={READINGS.join('/')} aria-label={web['survey.touch-volts-between']}>
      {readings.map(({ id }, index) => {
        const name = say(web['survey.touch-reading'], { number: String(index + 1) })
        const path = [...READINGS, id]
        return (
          <section key={id} className="card" aria-label={name}>
            <h3>{name}</h3>
            <Field path={[...path, 'from']} label={web['survey.touch-from']} />
            <Field path={[...path, 'to']} label={web['survey.touch-to']} />
            <Field path={[...path, 'volts']} label={web['survey.touch-volts']} unit="V" least={0} />
            <Field path={[...path, 'unplugged']} label={web['survey.touch-unplugged']} />
            <TakeOut path={path}>{say(web['survey.thing-out'], { thing: name })}</TakeOut>
          </section>
        )
      })}
      <button
        type="button"
        disabled={!survey.canWrite}
        onClick={() => survey.act(...addActs([...READINGS, freeName(READINGS, 'reading')]))}
      >
        {web['survey.touch-add']}
      </button>
    </section>
  )
}
