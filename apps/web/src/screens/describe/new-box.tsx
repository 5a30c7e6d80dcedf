import type { FeedKind, OutputKind, ProfileKind, SkeletonKind } from '@tubwright/formats'
import { FEED_KINDS, PUMPS_MAX, SKELETON_KINDS, writeSkeleton } from '@tubwright/formats'
import type { ReactNode } from 'react'
import { useEffect, useId, useRef, useState } from 'react'
import { useLocation } from 'wouter'
import { useApp, useWeb } from '../../app/context.ts'
import { Chips, ManyChips } from '../../parts/chips.tsx'
import type { FormFault, PumpKind, SkeletonForm } from './skeleton-form.ts'
import {
  answersOf,
  faultOf,
  formOf,
  OTHER_OUTPUTS,
  PUMP_KINDS,
  servedProfiles,
} from './skeleton-form.ts'

const KINDS = Object.keys(SKELETON_KINDS) as readonly SkeletonKind[]
const COUNTS = Array.from({ length: PUMPS_MAX + 1 }, (_, count) => String(count))

/** The answers so far, what is wrong with them, and the way to the box that they make. */
function useNewBox(taken: readonly string[]) {
  const { space, words } = useApp()
  const [, go] = useLocation()
  const [kind, setKind] = useState<SkeletonKind>('two-legs')
  const [form, setForm] = useState<SkeletonForm>(() => formOf('', 'two-legs'))
  const [fault, setFault] = useState<FormFault>()
  const change = (some: Partial<SkeletonForm>): void => {
    setFault(undefined)
    setForm(before => ({ ...before, ...some }))
  }
  const choose = (chosen: string): void => {
    const found = KINDS.find(each => each === chosen) ?? 'two-legs'
    setKind(found)
    change(formOf(form.id, found))
  }
  const make = async (): Promise<void> => {
    const found = faultOf(form, taken)
    setFault(found)
    if (found) return
    const text = writeSkeleton(answersOf(form), words.fieldText, words.skeleton)
    await space.putOnShelf({ kind: 'control-box', id: form.id, text, at: space.now() })
    go(`/describe/control-box/${form.id}`)
  }
  return { kind, form, fault, change, choose, make }
}

/** A few questions, then a box that can be read as it stands: the rest is done in its text. */
export function NewBox({
  taken,
  close,
}: {
  readonly taken: readonly string[]
  readonly close: () => void
}): ReactNode {
  const web = useWeb()
  const { kind, form, fault, change, choose, make } = useNewBox(taken)
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus(), [])
  return (
    <section className="card new-box" aria-label={web['describe.new']}>
      <h2 tabIndex={-1} ref={heading}>
        {web['describe.new']}
      </h2>
      <p>{web['describe.new-help']}</p>
      <IdField id={form.id} set={id => change({ id })} isWrong={isOfId(fault)} />
      <Chips
        legend={web['describe.kind']}
        options={KINDS.map(each => ({ value: each, label: web[`describe.kind-${each}`] }))}
        chosen={kind}
        choose={choose}
      />
      <Questions form={form} change={change} />
      {fault && (
        <p className="wrong" role="alert">
          {web[fault]}
        </p>
      )}
      <p className="foot">
        <button type="button" className="main" onClick={() => void make()}>
          {web['describe.make']}
        </button>
        <button type="button" onClick={close}>
          {web.cancel}
        </button>
      </p>
    </section>
  )
}

const isOfId = (fault: FormFault | undefined): boolean =>
  fault === 'describe.wrong-id' || fault === 'describe.id-taken'

function IdField({
  id,
  set,
  isWrong,
}: {
  readonly id: string
  readonly set: (id: string) => void
  readonly isWrong: boolean
}): ReactNode {
  const web = useWeb()
  const field = useId()
  return (
    <div className="field">
      <label className="label" htmlFor={field}>
        {web['describe.id']}
      </label>
      <p className="hint" id={`${field}-hint`}>
        {web['describe.id-hint']}
      </p>
      <input
        id={field}
        type="text"
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        maxLength={40}
        value={id}
        aria-invalid={isWrong}
        aria-describedby={`${field}-hint`}
        onChange={event => set(event.target.value)}
      />
    </div>
  )
}

function Questions({
  form,
  change,
}: {
  readonly form: SkeletonForm
  readonly change: (some: Partial<SkeletonForm>) => void
}): ReactNode {
  const web = useWeb()
  const served = servedProfiles(form)
  return (
    <>
      <ManyChips
        legend={web['describe.feeds']}
        options={FEED_KINDS.map(each => ({ value: each, label: web[`describe.feed-${each}`] }))}
        chosen={form.feeds}
        choose={chosen => change({ feeds: chosen as readonly FeedKind[] })}
      />
      {PUMP_KINDS.map(pump => (
        <PumpCount key={pump} pump={pump} form={form} change={change} />
      ))}
      <ManyChips
        legend={web['describe.outputs']}
        options={OTHER_OUTPUTS.map(each => ({
          value: each,
          label: web[`describe.output-${each}`],
        }))}
        chosen={form.outputs}
        choose={chosen => change({ outputs: chosen as readonly OutputKind[] })}
      />
      <Chips
        legend={web['describe.poles']}
        hint={web['describe.poles-hint']}
        options={['1', '2'].map(each => ({ value: each, label: each }))}
        chosen={String(form.heaterPoles)}
        choose={chosen => change({ heaterPoles: chosen === '1' ? 1 : 2 })}
      />
      {served.length > 0 && (
        <ManyChips
          legend={web['describe.profiles']}
          options={served.map(each => ({ value: each, label: web[`describe.profile-${each}`] }))}
          chosen={form.profiles.filter(each => served.includes(each))}
          choose={chosen => change({ profiles: chosen as readonly ProfileKind[] })}
        />
      )}
    </>
  )
}

function PumpCount({
  pump,
  form,
  change,
}: {
  readonly pump: PumpKind
  readonly form: SkeletonForm
  readonly change: (some: Partial<SkeletonForm>) => void
}): ReactNode {
  const web = useWeb()
  return (
    <Chips
      legend={web[`describe.output-${pump}`]}
      options={COUNTS.map(each => ({ value: each, label: each }))}
      chosen={String(form.pumps[pump])}
      choose={chosen => change({ pumps: { ...form.pumps, [pump]: Number(chosen) } })}
    />
  )
}
