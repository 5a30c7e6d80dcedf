import { isEarth } from '../../../../domain/board/board.ts'
import type { ColourCode } from '../../../../domain/codebook/colours.ts'
import {
  COLOUR_CODES,
  meaningOf,
  TAPED_FROM_AWG,
  UK_BEFORE_2006,
} from '../../../../domain/codebook/colours.ts'
import { ownFunction } from '../../../../domain/supply/circuits.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { CableConductor, Segment, SupplyEvidence } from '../../supply/evidence.ts'
import { isAmerican } from '../../supply/evidence.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { conclude, fact } from '../../supply/rule.ts'

const gaugeOf = ({ text }: CableConductor['size']): number | undefined => {
  const [, gauge] = /^(\d+) AWG$/u.exec(text) ?? []
  return gauge === undefined ? undefined : Number(gauge)
}

/** Tape makes a neutral or an earth of a large conductor only. */
function tapedJudgement(
  { survey }: SupplyEvidence,
  code: ColourCode,
  { size, colour, taped = colour }: CableConductor,
  meant: readonly string[],
): PointFinding {
  const gauge = gaugeOf(size)
  const isSmall = gauge !== undefined && gauge > TAPED_FROM_AWG
  const params = { colour, taped, size: size.text }
  if (meant.includes(colour)) return fact(true, { message: 'colour-right', clause: code, params })
  if (!meant.includes(taped)) return fact(false, { message: 'colour-wrong', clause: code, params })
  return isAmerican(survey.region) && isSmall
    ? fact(false, { message: 'colour-taped-small', clause: code, params })
    : fact(true, { message: 'colour-taped', clause: code, params })
}

/** A line in the colour of the earth misleads whoever comes next; in that of the neutral it is marked again. */
function lineJudgement(
  code: ColourCode,
  { colour, taped = colour, size }: CableConductor,
): PointFinding {
  const params = { colour, taped, size: size.text }
  if (code.earth.includes(colour))
    return fact(false, { message: 'line-as-earth', clause: code, params, severity: 'danger' })
  return fact(!code.neutral.includes(taped), { message: 'line-as-neutral', clause: code, params })
}

/** A cable all of whose conductors are right by the colours of its own time is as it was allowed. */
function codeOf({ survey: { region } }: SupplyEvidence, { cable }: Segment): ColourCode {
  const isOld =
    region === 'UK' &&
    cable.conductors.every(({ colour, function: does }) => {
      const meant = meaningOf(UK_BEFORE_2006, colour)
      if (ownFunction(does) === 'neutral') return meant === 'neutral'
      return isEarth(ownFunction(does)) ? meant === 'earth' : meant === 'line'
    })
  return isOld ? UK_BEFORE_2006 : COLOUR_CODES[region]
}

function judge(
  evidence: SupplyEvidence,
  segment: Segment,
  conductor: CableConductor,
): readonly CodeFinding[] {
  const { cable } = segment
  const code = codeOf(evidence, segment)
  const does = ownFunction(conductor.function)
  // Bare conductors are a matter of their own.
  if (conductor.colour === 'bare') return []
  const meant = does === 'neutral' ? code.neutral : isEarth(does) ? code.earth : undefined
  const about = {
    rule: supplyColours.id,
    subjects: [cable.id],
    topic: conductor.id,
    severity: 'caution' as const,
    params: { cable: cable.label, conductor: conductor.id },
  }
  if (meant) return [conclude(about, {}, () => tapedJudgement(evidence, code, conductor, meant))]
  return conclude(about, {}, () => lineJudgement(code, conductor)).verdict === 'holds'
    ? []
    : [conclude(about, {}, () => lineJudgement(code, conductor))]
}

/** Neutral and earth have their colours along their whole length; tape serves on large ones only. */
export const supplyColours: SupplyRule = {
  id: 'SUPPLY-13',
  title: 'Colours that say what they carry',
  about: 'segment',
  source: 'NEC 200.6, 250.119; CE Code 4-036; IEC 60445; AS/NZS 3000 3.8',
  check: evidence =>
    evidence.circuits.flatMap(({ segments }) =>
      segments.flatMap(segment =>
        segment.cable.conductors.flatMap(conductor => judge(evidence, segment, conductor)),
      ),
    ),
}
