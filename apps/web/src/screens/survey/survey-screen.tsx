import type { ReactNode } from 'react'
import { useEffect } from 'react'
import { Link, useParams } from 'wouter'
import { useWeb } from '../../app/context.ts'
import { Screen } from '../../app/frame.tsx'
import { PhotosGroup } from '../photos/photos-group.tsx'
import { AskedProvider, goToField } from './asked.ts'
import { DoneGroup } from './done-group.tsx'
import { useGroupName } from './group-name.ts'
import type { Group } from './groups.ts'
import { groupsOf } from './groups.ts'
import { LoadGroup } from './load-group.tsx'
import { LoadsGroup } from './loads-group.tsx'
import { ProtectionGroup } from './protection-group.tsx'
import { ReadingsGroup } from './readings-group.tsx'
import { RoomGroup } from './room-group.tsx'
import { RunGroup } from './run-group.tsx'
import { ServiceGroup } from './service-group.tsx'
import { SupplyGroup } from './supply-group.tsx'
import { pathAt } from './survey-path.ts'
import { TouchGroup } from './touch-group.tsx'
import { TubGroup } from './tub-group.tsx'
import { useStateText } from './use-state-text.ts'
import { useSurvey } from './use-survey.ts'
import { YardGroup } from './yard-group.tsx'

const SCREENS: Readonly<Record<Exclude<Group['kind'], 'load'>, () => ReactNode>> = {
  tub: TubGroup,
  supply: SupplyGroup,
  protection: ProtectionGroup,
  run: RunGroup,
  loads: LoadsGroup,
  room: RoomGroup,
  yard: YardGroup,
  service: ServiceGroup,
  touch: TouchGroup,
  readings: ReadingsGroup,
  photos: PhotosGroup,
  done: DoneGroup,
}

/**
 * The survey: its groups as a list, or one of them.
 *
 * @param field - the address of the field that somebody is sent to
 */
export function SurveyScreen({
  group,
  field,
}: {
  readonly group: string | undefined
  readonly field?: string | undefined
}): ReactNode {
  const { document } = useSurvey()
  const groups = groupsOf(document)
  const index = groups.findIndex(each => each.id === group)
  const found = groups[index]
  return found ? (
    <GroupScreen key={field} groups={groups} index={index} group={found} field={field} />
  ) : (
    <Overview groups={groups} />
  )
}

function GroupScreen({
  groups,
  index,
  group,
  field,
}: {
  readonly groups: readonly Group[]
  readonly index: number
  readonly group: Group
  readonly field: string | undefined
}): ReactNode {
  const { id = '' } = useParams()
  const web = useWeb()
  const nameOf = useGroupName()
  const isOne = ({ kind }: Group) => kind === 'load'
  // From a load to all of them, where the next one is added; from all of them on, past each.
  const loads = groups.find(each => each.kind === 'loads')
  const before = isOne(group) ? loads : groups.slice(0, index).findLast(each => !isOne(each))
  const after = isOne(group) ? loads : groups.slice(index + 1).find(each => !isOne(each))
  const href = (to: Group | undefined) => (to ? `/job/${id}/survey/${to.id}` : `/job/${id}/survey`)
  const Body = group.kind === 'load' ? undefined : SCREENS[group.kind]
  // After the heading has taken the focus: effects inside run first.
  useEffect(() => {
    if (field !== undefined) goToField(pathAt(field))
  }, [field])
  return (
    <Screen heading={nameOf(group)}>
      <AskedProvider value={field === undefined ? undefined : pathAt(field)}>
        {Body ? <Body /> : <LoadGroup key={group.load} load={group.load ?? ''} />}
      </AskedProvider>
      <div className="foot">
        {field !== undefined && (
          <Link className="button main" href={`/job/${id}/supply`}>
            {web['survey.back-to-supply']}
          </Link>
        )}
        <Link className="button" href={href(before)}>
          {web.back}
        </Link>
        {after && (
          <Link className={field === undefined ? 'button main' : 'button'} href={href(after)}>
            {web.next}
          </Link>
        )}
      </div>
    </Screen>
  )
}

function Overview({ groups }: { readonly groups: readonly Group[] }): ReactNode {
  const { id = '' } = useParams()
  const web = useWeb()
  const nameOf = useGroupName()
  const textOf = useStateText(groups)
  return (
    <Screen heading={web['survey.title']}>
      <ol className="plain">
        {groups.map(group => (
          <li key={group.id}>
            <Link className="card" href={`/job/${id}/survey/${group.id}`}>
              <span className="title">{nameOf(group)}</span>{' '}
              <span className="quiet">{textOf(group)}</span>
            </Link>
          </li>
        ))}
      </ol>
    </Screen>
  )
}
