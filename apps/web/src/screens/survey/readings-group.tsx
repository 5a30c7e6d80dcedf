import type { System } from '@tubwright/core'
import { EMFS, SITUATIONS, SYSTEMS, WITHOUT_NEUTRAL } from '@tubwright/core'
import type { ReactNode } from 'react'
import { useState } from 'react'
import { useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { useAsked } from './asked.ts'
import { Field } from './field.tsx'
import { TakeOut } from './items.tsx'
import { MeterGate } from './meter-gate.tsx'
import { inRecord, useSurvey } from './use-survey.ts'

/** In the order in which the probes move least. */
const READINGS = [
  'leg1ToLeg2',
  'leg1ToNeutral',
  'leg2ToNeutral',
  'leg1ToEarth',
  'leg2ToEarth',
  'neutralToEarth',
] as const

/** Readings that a source can give: one leg or no neutral leaves some out. */
function readingsOf(system: unknown): readonly (typeof READINGS)[number][] {
  if (!SYSTEMS.includes(system as System)) return READINGS
  const known = system as System
  const has = (end: string): boolean => {
    if (end === 'neutral') return !WITHOUT_NEUTRAL.includes(known)
    return end === 'earth' || EMFS[known][end as 'leg1' | 'leg2'] !== undefined
  }
  return READINGS.filter(each => each.split('To').every(end => has(end.toLowerCase())))
}

interface Taken {
  readonly id: string
  readonly situation?: unknown
}

/** What a meter shows at the terminals of the tub: asked of nobody who has not done it before. */
export function ReadingsGroup(): ReactNode {
  const web = useWeb()
  const { value } = useSurvey()
  const written = value(['readings'])
  const taken = Array.isArray(written) ? (written as readonly Taken[]) : []
  return (
    <>
      <p>{web['survey.readings-why']}</p>
      <MeterGate
        caution={web['survey.readings-caution']}
        leave={web['survey.readings-leave']}
        isTaken={taken.length > 0}
      >
        <Situations taken={taken} />
      </MeterGate>
    </>
  )
}

/** One situation at a time, with the readings taken in it. */
function Situations({ taken }: { readonly taken: readonly Taken[] }): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const asked = useAsked()
  const inSituation = (situation: string) => taken.find(each => each.situation === situation)
  const [shown, setShown] = useState<string | undefined>(
    () => taken.find(each => each.id === asked?.[1])?.id ?? taken.at(-1)?.id,
  )
  const reading = taken.find(each => each.id === shown)
  const choose = (situation: string): void => {
    const found = inSituation(situation)
    setShown(found?.id ?? situation)
    if (!found)
      survey.act(survey.bring(['readings', situation]), {
        do: 'set',
        path: inRecord(['readings', situation, 'situation']),
        value: situation,
      })
  }
  return (
    <>
      <Chips
        legend={web['survey.situation']}
        options={SITUATIONS.map(each => ({ value: each, label: web[`option.situation-${each}`] }))}
        chosen={reading && String(reading.situation)}
        choose={choose}
        isDisabled={!survey.canWrite}
      />
      {reading && <Six reading={reading} />}
    </>
  )
}

function Six({ reading }: { readonly reading: Taken }): ReactNode {
  const web = useWeb()
  const { value } = useSurvey()
  const path = ['readings', reading.id]
  const situated = SITUATIONS.find(each => each === reading.situation)
  return (
    <section aria-label={situated && web[`option.situation-${situated}`]}>
      {situated && <p>{web[`survey.situation-${situated}`]}</p>}
      <p className="hint">{web['survey.readings-measured']}</p>
      {readingsOf(value(['supply', 'system'])).map(each => (
        <Field
          key={each}
          path={[...path, each]}
          label={web[`survey.reading-${each}`]}
          unit="V"
          least={0}
        />
      ))}
      {situated === 'heating' && (
        <Field
          path={[...path, 'heaterAmps']}
          label={web['survey.reading-heaterAmps']}
          unit="A"
          least={0}
        />
      )}
      <TakeOut path={path} />
    </section>
  )
}
