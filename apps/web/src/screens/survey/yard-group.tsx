import { habitsOf } from '@tubwright/core'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import { Field } from './field.tsx'
import { useIsAmerican } from './here.ts'
import type { Item } from './items.tsx'
import { addActs, labelOf, TakeOut, useFreeId } from './items.tsx'
import type { SurveyPath } from './use-survey.ts'
import { useSurvey } from './use-survey.ts'

/** What stands around the tub, by what is asked of each. */
const LISTS = [
  { list: 'receptacles', one: 'receptacle', asks: ['distance', 'groundFault', 'feedsTub'] },
  { list: 'lights', one: 'light', asks: ['distance', 'height', 'groundFault'] },
  { list: 'switches', one: 'switch', asks: ['distance'] },
  { list: 'metal', one: 'metal-thing', asks: ['distance', 'bonded'] },
] as const
type Listed = (typeof LISTS)[number]

const QUESTIONS = {
  distance: 'survey.thing-distance',
  height: 'survey.light-height',
  groundFault: 'survey.thing-protected',
  feedsTub: 'survey.feeds-tub',
  bonded: 'survey.metal-bonded',
} as const satisfies Readonly<Record<Listed['asks'][number], string>>

const useLengthUnit = (): 'ft' | 'm' => habitsOf(useSurvey().region ?? 'US').lengthUnit

/** What stands around the tub, and how far from it. */
export function YardGroup(): ReactNode {
  const web = useWeb()
  const unit = useLengthUnit()
  const at = (...keys: readonly string[]): SurveyPath => ['yard', ...keys]
  return (
    <>
      <p className="hint">{web['survey.yard-hint']}</p>
      <Field path={at('setting')} label={web['survey.setting']} />
      <Field path={at('dwelling')} label={web['survey.dwelling']} />
      <Field path={at('selfContained')} label={web['survey.self-contained']} />
      <Field
        path={at('rimHeight')}
        label={web['survey.rim-height']}
        hint={web['survey.rim-height-hint']}
        unit={unit === 'ft' ? 'in' : 'cm'}
      />
      <Field path={at('groundBonded')} label={web['survey.ground-bonded']} />
      <h2>{web['survey.disconnect']}</h2>
      <Field
        path={at('disconnect', 'distance')}
        label={web['survey.disconnect-distance']}
        unit={unit}
      />
      <Field path={at('disconnect', 'inSight')} label={web['survey.disconnect-sight']} />
      <Field
        path={at('disconnect', 'reach')}
        label={web['survey.disconnect-reach']}
        hint={web['survey.disconnect-reach-hint']}
        unit={unit}
      />
      {LISTS.map(each => (
        <Things key={each.list} listed={each} />
      ))}
      <Bond />
    </>
  )
}

function Bond(): ReactNode {
  const web = useWeb()
  const isAmerican = useIsAmerican()
  return (
    <>
      <h2>{web['survey.bond']}</h2>
      <Field
        path={['yard', 'bond', 'size']}
        label={web['survey.bond-size']}
        usual={isAmerican ? ['8 AWG', '6 AWG'] : ['2.5 mm2', '4 mm2', '6 mm2']}
      />
      <Field path={['yard', 'bond', 'strands']} label={web['survey.bond-strands']} />
    </>
  )
}

/** Things of one kind: none, or each with what is asked of it. */
function Things({ listed }: { readonly listed: Listed }): ReactNode {
  const { list, one } = listed
  const web = useWeb()
  const survey = useSurvey()
  const freeName = useFreeId()
  const path = ['yard', list]
  const written = survey.value(path)
  const things = Array.isArray(written) ? (written as readonly Item[]) : []
  const add = (): void => {
    const id = freeName(path, one)
    const label = say(web[`survey.${one}`], { number: String(things.length + 1) })
    survey.act(...addActs([...path, id], { label }))
  }
  return (
    <section aria-label={web[`survey.${list}`]} data-field={path.join('/')}>
      <h2>{web[`survey.${list}`]}</h2>
      {things.map(each => (
        <Thing key={each.id} thing={each} listed={listed} />
      ))}
      <div className="chips">
        {things.length === 0 && (
          <label className="chip">
            <input
              type="checkbox"
              checked={written !== undefined}
              disabled={!survey.canWrite}
              onChange={event => (event.target.checked ? survey.set(path, []) : survey.clear(path))}
            />
            <span>{web['survey.none-near']}</span>
          </label>
        )}
        <button type="button" disabled={!survey.canWrite} onClick={add}>
          {web[`survey.add-${list}`]}
        </button>
      </div>
    </section>
  )
}

function Thing({ thing, listed }: { readonly thing: Item; readonly listed: Listed }): ReactNode {
  const web = useWeb()
  const unit = useLengthUnit()
  const name = labelOf(thing)
  const path = ['yard', listed.list, thing.id]
  const question = (key: Listed['asks'][number]) =>
    listed.list === 'lights' && key === 'distance' ? 'survey.light-distance' : QUESTIONS[key]
  return (
    <section className="card" aria-label={name}>
      <h3>{name}</h3>
      {listed.asks.map(key => (
        <Field
          key={key}
          path={[...path, key]}
          label={say(web[question(key)], { thing: name })}
          unit={unit}
        />
      ))}
      <details>
        <summary>{say(web['survey.thing-name'], { thing: name })}</summary>
        <Field path={[...path, 'label']} label={say(web['survey.thing-name'], { thing: name })} />
      </details>
      <TakeOut path={path}>{say(web['survey.thing-out'], { thing: name })}</TakeOut>
    </section>
  )
}
