import { useSurvey } from './use-survey.ts'

/** A wire of a cable, as far as it was answered. */
export interface Wire {
  readonly id: string
  readonly function?: unknown
  readonly from?: unknown
}

/** A piece of the run, as far as it was answered. */
export interface Piece {
  readonly id: string
  readonly label?: unknown
  readonly from?: unknown
  readonly to?: unknown
  readonly heatMark?: unknown
  readonly conductors: readonly Wire[]
}

interface WrittenDevice {
  readonly id: string
  readonly device?: unknown
  readonly label?: unknown
  readonly heatMark?: unknown
}

/** What stands in the run besides its cables. */
export function useRunDevices(): readonly WrittenDevice[] {
  const { value } = useSurvey()
  const devices = value(['supply', 'devices'])
  return Array.isArray(devices) ? (devices as readonly WrittenDevice[]) : []
}

/** The first device of the run, as the survey has it. */
export function useFirstDevice(): { readonly id: string; readonly device: string } | undefined {
  const [first] = useRunDevices()
  return first ? { id: first.id, device: String(first.device ?? '') } : undefined
}

/** Every cable of the run. */
export function usePieces(): readonly Piece[] {
  const { value } = useSurvey()
  const cables = value(['supply', 'cables'])
  const all = Array.isArray(cables) ? (cables as readonly Partial<Piece>[]) : []
  return all.map(each => ({ ...each, id: String(each.id), conductors: each.conductors ?? [] }))
}

/** The cable that leads to the box. */
export function useRun(): Piece | undefined {
  const pieces = usePieces()
  return pieces.find(each => each.to === 'box') ?? pieces[0]
}
