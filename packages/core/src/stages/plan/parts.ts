import type { Terminal } from '../../domain/board/board.ts'
import { leavesGap } from '../../domain/box/keypad-hole.ts'
import type { Job } from '../../domain/job.ts'
import { findTerminal } from '../../domain/job.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import type { PlannedPart } from './artifact.ts'

const TERMINALS_FOR: Readonly<Record<Terminal['kind'], PlannedPart['message'] | undefined>> = {
  screw: 'ferrules',
  stud: 'ring-terminals',
  tab: 'tab-terminals',
  pin: undefined,
}

/** Bare ends that need a crimped end, by what their terminal takes. */
function crimped(job: Job, landing: Landing): readonly PlannedPart[] {
  const byMessage = new Map<PlannedPart['message'], string[]>()
  for (const end of job.ends) {
    const load = job.loads.find(each => each.id === end.owner)
    const isPlugged =
      end.of === 'lead' && load?.plug !== undefined && !(end.owner in landing.adapters)
    const terminal = findTerminal(job, landing.ends[end.id] ?? '')
    const message = terminal && !isPlugged ? TERMINALS_FOR[terminal.kind] : undefined
    if (!message || end.board !== 'box') continue
    byMessage.set(message, [...(byMessage.get(message) ?? []), end.id])
  }
  return [...byMessage].map(([message, subjects]) => ({
    message,
    subjects,
    params: { count: subjects.length },
  }))
}

/** A plate to cover what the old keypad's hole leaves open around the new keypad. */
function blankingPlate({ tub, box }: Job): readonly PlannedPart[] {
  const [hole, keypad] = [tub.keypadHole, box.keypadHole]
  if (!hole || !keypad || !leavesGap(hole, keypad)) return []
  const params = { width: hole.width.si, height: hole.height.si }
  return [{ message: 'blanking-plate', subjects: ['keypad'], params }]
}

/** What has to be made or bought besides the box. */
export function partsOf(job: Job, landing: Landing): readonly PlannedPart[] {
  const adapters = Object.entries(landing.adapters).map(([load, label]): PlannedPart => {
    const plug = job.loads.find(each => each.id === load)?.plug?.shape ?? 'bare leads'
    return { message: 'adapter', subjects: [load], params: { load: label, plug } }
  })
  const capped = job.ends.filter(end => landing.ends[end.id] === 'insulated').map(end => end.id)
  const caps: PlannedPart[] =
    capped.length > 0
      ? [{ message: 'caps', subjects: capped, params: { count: capped.length } }]
      : []
  return [...adapters, ...crimped(job, landing), ...blankingPlate(job), ...caps]
}
