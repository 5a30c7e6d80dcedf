import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { Link, useParams } from 'wouter'
import { useWeb } from '../../app/context.ts'
import { Screen } from '../../app/frame.tsx'
import { PhotosGroup } from '../photos/photos-group.tsx'
import { DoneGroup } from './done-group.tsx'
import { useGroupName } from './group-name.ts'
import type { Group } from './groups.ts'
import { groupFor, groupsOf } from './groups.ts'
import { LoadGroup } from './load-group.tsx'
import { LoadsGroup } from './loads-group.tsx'
import { ProtectionGroup } from './protection-group.tsx'
import { RoomGroup } from './room-group.tsx'
import { RunGroup } from './run-group.tsx'
import { SupplyGroup } from './supply-group.tsx'
import { TubGroup } from './tub-group.tsx'
import { useDraft } from './use-draft.ts'
import { useSurvey } from './use-survey.ts'

const SCREENS: Readonly<Record<Exclude<Group['kind'], 'load'>, () => ReactNode>> = {
  tub: TubGroup,
  supply: SupplyGroup,
  protection: ProtectionGroup,
  run: RunGroup,
  loads: LoadsGroup,
  room: RoomGroup,
  photos: PhotosGroup,
  done: DoneGroup,
}

/** The survey: its groups as a list, or one of them. */
export function SurveyScreen({ group }: { readonly group: string | undefined }): ReactNode {
  const { document } = useSurvey()
  const groups = groupsOf(document)
  const index = groups.findIndex(each => each.id === group)
  const found = groups[index]
  return found ? (
    <GroupScreen groups={groups} index={index} group={found} />
  ) : (
    <Overview groups={groups} />
  )
}

function GroupScreen({
  groups,
  index,
  group,
}: {
  readonly groups: readonly Group[]
  readonly index: number
  readonly group: Group
}): ReactNode {
  const { id = '' } = useParams()
  const web = useWeb()
  const nameOf = useGroupName()
  // From a load back to all of them, where the next one is added.
  const before =
    group.kind === 'load' ? groups.find(each => each.kind === 'loads') : groups[index - 1]
  const after = groups[index + 1]
  const href = (to: Group | undefined) => (to ? `/job/${id}/survey/${to.id}` : `/job/${id}/survey`)
  const Body = group.kind === 'load' ? undefined : SCREENS[group.kind]
  return (
    <Screen heading={nameOf(group)}>
      {Body ? <Body /> : <LoadGroup key={group.load} load={group.load ?? ''} />}
      <div className="foot">
        <Link className="button" href={href(before)}>
          {web.back}
        </Link>
        {after && (
          <Link className="button main" href={href(after)}>
            {web.next}
          </Link>
        )}
      </div>
    </Screen>
  )
}

/** How much of a group is open, in words. */
function useOpenIn(groups: readonly Group[]): (group: Group) => string {
  const web = useWeb()
  const { open } = useDraft()
  return group => {
    const count = open.filter(({ path }) => groupFor(groups, path)?.id === group.id).length
    if (count > 0) return say(web['survey.still-open'], { count: String(count) })
    return group.covers.length > 0 ? web['survey.answered'] : ''
  }
}

function Overview({ groups }: { readonly groups: readonly Group[] }): ReactNode {
  const { id = '' } = useParams()
  const web = useWeb()
  const nameOf = useGroupName()
  const openIn = useOpenIn(groups)
  return (
    <Screen heading={web['survey.title']}>
      <ol className="plain">
        {groups.map(group => (
          <li key={group.id}>
            <Link className="card" href={`/job/${id}/survey/${group.id}`}>
              <span className="title">{nameOf(group)}</span>{' '}
              <span className="quiet">{openIn(group)}</span>
            </Link>
          </li>
        ))}
      </ol>
    </Screen>
  )
}
