import type { PlateLine, Region } from '@tubwright/core'
import { COLOURS, habitsOf, readPlate, shapeOf } from '@tubwright/core'
import type { Act, Json } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useEffect, useState } from 'react'
import { useLocation, useParams } from 'wouter'
import { useApp, useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { LineEditor, SizeEditor } from './editors.tsx'
import { Field, unknownOf } from './field.tsx'
import type { Lead, LoadSoFar } from './load-so-far.ts'
import { More } from './more.tsx'
import { Plug } from './plug.tsx'
import { inRecord, useSurvey } from './use-survey.ts'

/** Everything asked of one load: its plate, its leads by function, its plug. */
export function LoadGroup({ load }: { readonly load: string }): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const { id: job = '' } = useParams()
  const [, go] = useLocation()
  const found = survey.value(['loads', load]) as LoadSoFar | undefined
  if (!found) return <p>{web['shell.no-entry']}</p>
  const base = ['loads', load]
  const shape = shapeOf(found)
  const isProbe = found.kind === 'probe'
  const habits = habitsOf(survey.region ?? 'US')
  const takeOut = (): void => {
    survey.act({ do: 'withdraw', path: inRecord(base) })
    go(`/job/${job}/survey/loads`)
  }
  return (
    <>
      {isProbe ? (
        <>
          <Field path={[...base, 'curve']} label={web['survey.curve']} />
          <Field path={[...base, 'place']} label={web['survey.place']} />
        </>
      ) : (
        <>
          <Field
            path={[...base, 'volts']}
            label={web['survey.volts']}
            unit="V"
            usual={habits.volts}
          />
          <Plate load={found} inWatts={shape?.inWatts === true} />
          <MovesWater load={found} />
        </>
      )}
      <Leads load={found} region={survey.region ?? 'US'} />
      <Plug load={found} />
      <More
        below={[base]}
        asked={[
          [...base, 'volts'],
          [...base, 'curve'],
          [...base, 'place'],
          [...base, 'plug'],
          [...base, 'doubleInsulated'],
          [...base, 'movesWaterThroughHeater'],
        ]}
      />
      <p className="foot">
        <button type="button" disabled={!survey.canWrite} onClick={takeOut}>
          {web['survey.withdraw']}
        </button>
      </p>
    </>
  )
}

/** Figures of a plate that were understood, and for which the load has no circuit. */
const unusedOf = ({ amps, watts }: PlateLine, circuits: number): readonly string[] => [
  ...amps.slice(circuits),
  ...(amps.length > 0 && watts !== undefined ? [watts] : []),
]

/** The plate as it is printed, and each figure of it where it went. */
function Plate({
  load,
  inWatts,
}: {
  readonly load: LoadSoFar
  readonly inWatts: boolean
}): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const [rest, setRest] = useState('')
  const [unused, setUnused] = useState('')
  const circuits = load.circuits ?? []
  const base = ['loads', load.id]
  const nameOf = (id: string): string =>
    circuits.length > 1 ? (web[`survey.circuit-${id}` as keyof typeof web] ?? id) : ''
  const read = (text: string): PlateLine =>
    readPlate(inWatts && /^\s*[\d.,]+\s*$/u.test(text) ? `${text} W` : text)
  const refuse = (text: string): string | undefined =>
    read(text).hasMinus && say(web['survey.plate-minus'], { is: text })
  const take = (line: Json): void => {
    const plate = read(String(line))
    setRest(plate.rest)
    setUnused(unusedOf(plate, circuits.length).join(', '))
    const at = (...path: readonly string[]) => inRecord([...base, ...path])
    const draws = circuits.flatMap(({ id }, index): readonly Act[] => {
      const amps = plate.amps[index]
      if (amps !== undefined)
        return [
          { do: 'set', path: at('circuits', id, 'amps'), value: amps },
          { do: 'clear', path: at('circuits', id, 'power') },
        ]
      if (plate.watts === undefined || plate.amps.length > 0) return []
      return [
        { do: 'set', path: at('circuits', id, 'power'), value: plate.watts },
        { do: 'clear', path: at('circuits', id, 'amps') },
      ]
    })
    survey.act(
      ...draws,
      ...(plate.volts === undefined
        ? []
        : [{ do: 'set' as const, path: at('volts'), value: plate.volts }]),
      ...(plate.frequency === undefined
        ? []
        : [{ do: 'set' as const, path: at('frequency'), value: plate.frequency }]),
      ...(plate.powerFactor === undefined
        ? []
        : circuits.map(({ id }) => ({
            do: 'set' as const,
            path: at('circuits', id, 'powerFactor'),
            value: plate.powerFactor ?? 1,
          }))),
    )
  }
  const isOpen = circuits.some(each => each.amps === undefined && each.power === undefined)
  return (
    <>
      {isOpen && (
        <LineEditor
          at={[...base, 'plate']}
          label={web['survey.plate']}
          hint={web['survey.plate-hint']}
          value=""
          set={take}
          refuse={refuse}
          isDisabled={!survey.canWrite}
        />
      )}
      {rest !== '' && <p className="look">{say(web['survey.plate-rest'], { rest })}</p>}
      {unused !== '' && <p className="look">{say(web['survey.plate-unused'], { unused })}</p>}
      {circuits.map(({ id, amps, power }) => {
        const draws = power !== undefined || (inWatts && amps === undefined) ? 'power' : 'amps'
        const isSaid = amps !== undefined || power !== undefined
        return isSaid || unknownOf(amps) || !isOpen ? (
          <Field
            key={id}
            path={[...base, 'circuits', id, draws]}
            label={say(web[draws === 'power' ? 'survey.power-of' : 'survey.amps-of'], {
              circuit: nameOf(id) || String(load.label ?? load.id),
            })}
          />
        ) : (
          <UnknownDraw key={id} load={load.id} circuit={id} label={nameOf(id)} draws={draws} />
        )
      })}
    </>
  )
}

/** A plate that cannot be read: one tap to say so. */
function UnknownDraw({
  load,
  circuit,
  label,
  draws,
}: {
  readonly load: string
  readonly circuit: string
  readonly label: string
  readonly draws: 'amps' | 'power'
}): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const path = ['loads', load, 'circuits', circuit, draws]
  const name = say(web[draws === 'power' ? 'survey.power-of' : 'survey.amps-of'], {
    circuit: label || circuit,
  })
  return (
    <p className="row under">
      <button
        type="button"
        className="plain"
        disabled={!survey.canWrite}
        onClick={() => survey.set(path, { unknown: 'not visible' })}
      >
        {name}: {web['survey.unknown']}
      </button>
    </p>
  )
}

/** Whether a pump pushes water through the heater, and on which of its circuits. */
function MovesWater({ load }: { readonly load: LoadSoFar }): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  if (load.kind !== 'pump' && load.kind !== 'circulation-pump') return undefined
  const path = ['loads', load.id, 'movesWaterThroughHeater']
  const value = survey.value(path)
  const ids = (load.circuits ?? []).map(each => each.id)
  const nameOf = (id: string) => web[`survey.circuit-${id}` as keyof typeof web] ?? id
  const sets = [ids, ...(ids.length > 1 ? ids.map(each => [each]) : []), []]
  return (
    <Chips
      legend={web['survey.moves-water']}
      options={sets.map(set => ({
        value: set.join(),
        label:
          set.length === 0
            ? web['survey.moves-water-no']
            : ids.length === 1
              ? web['survey.yes']
              : say(web['survey.moves-water-on'], { circuit: set.map(nameOf).join(' + ') }),
      }))}
      chosen={Array.isArray(value) ? value.join() : undefined}
      choose={chosen => survey.set(path, chosen === '' ? [] : chosen.split(','))}
      isDisabled={!survey.canWrite}
    />
  )
}

/** The leads by function: size, colours, and whether there is an earth. */
function Leads({ load, region }: { readonly load: LoadSoFar; readonly region: Region }): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const survey = useSurvey()
  const [saysEach, setSaysEach] = useState(false)
  // biome-ignore lint/correctness/useExhaustiveDependencies: another load begins anew
  useEffect(() => setSaysEach(false), [load.id])
  const leads = load.leads ?? []
  const habits = habitsOf(region)
  const base = ['loads', load.id, 'leads']
  const at = (id: string, key: string) => inRecord([...base, id, key])
  const usual = (lead: Lead) =>
    habits.leadColours[String(lead.function) as keyof typeof habits.leadColours] ?? 'black'
  const isUsual = leads.length > 0 && leads.every(each => each.colour === usual(each))
  const nameOf = (lead: Lead) =>
    web[`survey.lead-${String(lead.function)}` as keyof typeof web] ?? lead.id
  const colourName = (colour: string) =>
    words.values[`colour.${colour}` as keyof typeof words.values]
  const sizes = new Set(leads.map(each => each.size))
  const setAll = (key: string, valueFor: (lead: Lead) => Json) =>
    survey.act(
      ...leads.map((each): Act => ({ do: 'set', path: at(each.id, key), value: valueFor(each) })),
    )
  return (
    <>
      <EarthLead load={load} />
      <SizeEditor
        label={web['survey.lead-size']}
        value={sizes.size === 1 ? [...sizes][0] : undefined}
        set={value => setAll('size', () => value)}
        clear={() => undefined}
        usual={habits.leadSizes}
        isDisabled={!survey.canWrite}
      />
      <Chips
        legend={web['survey.colours']}
        options={[
          {
            value: 'usual',
            label: say(web['survey.colours-usual'], {
              colours: leads.map(each => `${nameOf(each)} ${colourName(usual(each))}`).join(', '),
            }),
          },
          { value: 'each', label: web['survey.colours-each'] },
        ]}
        chosen={saysEach ? 'each' : isUsual ? 'usual' : undefined}
        choose={chosen => {
          setSaysEach(chosen === 'each')
          if (chosen === 'usual') setAll('colour', usual)
        }}
        isDisabled={!survey.canWrite}
      />
      {(saysEach || (!isUsual && leads.some(each => each.colour !== undefined))) &&
        leads.map(each => (
          <Field
            key={each.id}
            path={[...base, each.id, 'colour']}
            label={say(web['survey.colour-of'], { wire: nameOf(each) })}
            labels={colourName}
            first={COLOURS}
          />
        ))}
    </>
  )
}

/** An earth lead, or double insulation, or neither: asked of loads that can stand on mains. */
function EarthLead({ load }: { readonly load: LoadSoFar }): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const shape = shapeOf(load)
  if (!shape?.leads.includes('earth')) return undefined
  const earth = ['loads', load.id, 'leads', 'earth']
  const insulated = ['loads', load.id, 'doubleInsulated']
  const has = (load.leads ?? []).some(each => each.function === 'earth')
  const said = survey.value(insulated)
  const without = (isInsulated: boolean): void =>
    survey.act(...(has ? [{ do: 'withdraw' as const, path: inRecord(earth) }] : []), {
      do: 'set',
      path: inRecord(insulated),
      value: isInsulated,
    })
  const withEarth = (): void =>
    survey.act(
      survey.bring(earth),
      { do: 'set', path: inRecord([...earth, 'function']), value: 'earth' },
      { do: 'clear', path: inRecord(insulated) },
    )
  return (
    <div data-field={insulated.join('/')}>
      <Chips
        legend={web['survey.earth-lead']}
        options={[
          { value: 'yes', label: web['survey.earth-lead-yes'] },
          { value: 'insulated', label: web['survey.earth-lead-insulated'] },
          { value: 'no', label: web['survey.earth-lead-no'] },
        ]}
        chosen={has ? 'yes' : said === true ? 'insulated' : said === false ? 'no' : undefined}
        choose={chosen => (chosen === 'yes' ? withEarth() : without(chosen === 'insulated'))}
        isDisabled={!survey.canWrite}
      />
    </div>
  )
}
