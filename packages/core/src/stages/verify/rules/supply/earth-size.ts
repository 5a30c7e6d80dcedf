import { atLeast } from '../../../../base/compare.ts'
import { given } from '../../../../base/possible.ts'
import { LINES } from '../../../../domain/board/board.ts'
import type { Codebook } from '../../../../domain/codebook/book.ts'
import { SURE_MULTIPLE } from '../../../../domain/codebook/bs-7671/table-41-3.ts'
import { ownFunction } from '../../../../domain/supply/circuits.ts'
import type { BreakerType, RatedTemperature } from '../../../../domain/supply/run-words.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type {
  CableConductor,
  CircuitEvidence,
  Segment,
  SupplyEvidence,
} from '../../supply/evidence.ts'
import { faultInputs, runLoop } from '../../supply/fault.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { conclude, fact, notCovered, reaches } from '../../supply/rule.ts'

const AT_ONCE = 0.1 // [s]
const LATE = 5 // [s]
const PHASE_VOLTS = 230

/**
 * An earth below its table may bear a fault all the same: by its heat until the breaker is off, at the
 * end of the run and at its start. There a breaker lets through less than the formula says, and how
 * much its maker knows.
 */
function byHeat(
  { byFaultHeat }: Codebook,
  { earth, insulation, breaker, type, start, run }: Heated,
): PointFinding | undefined {
  if (!byFaultHeat) return undefined
  const amps = PHASE_VOLTS / (start + run)
  const seconds = amps >= SURE_MULTIPLE[type]['0.4'] * breaker ? AT_ONCE : LATE
  const least = byFaultHeat(amps, seconds, insulation)
  const atEnd = reaches(earth.size.mm2, least.value, {
    message: 'earth-by-heat',
    clause: least.by,
    params: { size: earth.size.text, amps, seconds },
  })
  if (atEnd.verdict === 'breaks') return atEnd
  const atStart = byFaultHeat(PHASE_VOLTS / start, AT_ONCE, insulation)
  return atLeast(earth.size.mm2, atStart.value) ? atEnd : notCovered('earth-heat')
}

interface Heated {
  readonly earth: CableConductor
  readonly insulation: RatedTemperature
  readonly breaker: number
  readonly type: BreakerType
  /** Line to earth and back, at the start of the run and along it [Ω]. */
  readonly start: number
  readonly run: number
}

/** Of the lines as they begin: a joint to a thinner one lets no thinner earth do. */
const thickestOf = ({ conductors }: Segment['cable']): CableConductor | undefined =>
  conductors
    .filter(each => LINES.some(line => line === ownFunction(each.function)))
    .toSorted((a, b) => b.size.mm2 - a.size.mm2)[0]

function judge(
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  { cable, earth, material, method, insulation }: Segment,
): readonly CodeFinding[] {
  const { book } = evidence
  const line = thickestOf(cable)
  const about = {
    rule: earthSize.id,
    subjects: [cable.id],
    severity: 'danger' as const,
    params: { cable: cable.label },
  }
  if (!line) return []
  if (!earth) return [conclude(about, {}, () => fact(false, { message: 'no-earth' }))]
  // The earth of a listed cord is as large as its lines; the table is for what is laid.
  if (cable.moulded)
    return [
      conclude(about, {}, () =>
        reaches(earth.size.mm2, line.size.mm2, {
          message: 'earth-size',
          params: { size: earth.size.text, least: line.size.text, breaker: breakerOf(circuit) },
        }),
      ),
    ]
  const { type, start } = faultInputs(evidence)
  const fault = book?.byFaultHeat ? { insulation, type, start } : NO_FAULT
  return [
    conclude(about, { breaker: circuit.breaker, material, method, ...fault }, point => {
      const least = book?.earth({ ...point, line: line.size })
      if (!book || !least) return notCovered('earth')
      if (book.copperEarth && point.material === 'aluminium')
        return fact(false, { message: 'earth-aluminium', clause: book.copperEarth })
      const byTable = reaches(earth.size.mm2, least.value.mm2, {
        message: 'earth-size',
        clause: least.by,
        params: { size: earth.size.text, least: least.value.text, breaker: point.breaker },
      })
      if (byTable.verdict === 'holds') return byTable
      if (!book.byFaultHeat) return byTable
      const heat = { metal: point.material, heat: point.insulation }
      return byHeat(book, { ...point, earth, run: runLoop(circuit, heat) }) ?? byTable
    }),
  ]
}

const breakerOf = ({ breaker }: CircuitEvidence): number => Math.max(...breaker.values)

/** Where the table alone counts, a fault is asked for nothing. */
const NO_FAULT = {
  insulation: given<RatedTemperature>('70 °C'),
  type: given<BreakerType>('B'),
  start: given(0),
}

/** The earth conductor is there, and carries the fault until the breaker is off. */
export const earthSize: SupplyRule = {
  id: 'SUPPLY-6',
  title: 'The earth conductor is large enough',
  about: 'segment',
  source: 'NEC 250.122, 680.7(A); CE Code table 16; BS 7671 table 54.7; HD 60364-5-54',
  check: evidence =>
    evidence.circuits.flatMap(circuit =>
      circuit.segments.flatMap(segment => judge(evidence, circuit, segment)),
    ),
}
