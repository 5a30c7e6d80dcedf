import { choiceOf } from '../../../../base/possible.ts'
import { TABLE_1 } from '../../../../domain/codebook/nec/chapter-9-table-1.ts'
import type { InsulationType } from '../../../../domain/codebook/nec/chapter-9-table-5.ts'
import type { ConduitPiece } from '../../../../domain/codebook/nec/conduit-fill.ts'
import { conduitFill as fillOf } from '../../../../domain/codebook/nec/conduit-fill.ts'
import { CONDUITS, TRADE_SIZES } from '../../../../domain/supply/run-words.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { Segment } from '../../supply/evidence.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { conclude, fact, notCovered, within } from '../../supply/rule.ts'

/** In no conduit there is nothing to say. */
const NOTHING = 'conduit-none'
const SQUARE_METRES = 0.0254 * 0.0254 // [m²] of a square inch

/** Where it fits into whatever it may be, the one that it names is none that was found. */
const isOpen = ({ params }: CodeFinding): boolean => params['known'] === 'no'

function filled(piece: ConduitPiece, sizes: readonly string[], type: InsulationType): PointFinding {
  const fill = fillOf(piece, sizes, type)
  if (!fill) return notCovered('fill')
  return within(fill.taken * SQUARE_METRES, fill.limit * SQUARE_METRES, {
    message: 'conduit-fill',
    clause: TABLE_1,
    params: { conduit: piece.conduit, trade: piece.tradeSize },
  })
}

function judge({ at, cable, method, alongside, insulation }: Segment): readonly CodeFinding[] {
  const sizes = cable.conductors.map(each => each.size.text)
  const { kind, size } = cable.conduit ?? {}
  return [
    conclude(
      {
        rule: conduitFill.id,
        subjects: [cable.id],
        severity: 'warning',
        params: {
          cable: cable.label,
          count: sizes.length,
          known: kind?.kind === 'known' && size?.kind === 'known' ? 'yes' : 'no',
        },
      },
      {
        method,
        alongside,
        insulation,
        kind: choiceOf(kind, CONDUITS, `${at}.conduit.kind`),
        size: choiceOf(size, TRADE_SIZES, `${at}.conduit.size`),
      },
      point => {
        if (point.method !== 'conduit' && point.method !== 'flexible-conduit')
          return fact(true, { message: NOTHING })
        // What else lies in it takes room too, and nobody said how much.
        if (point.alongside > 0) return notCovered('fill')
        const piece = { conduit: point.kind, tradeSize: point.size }
        // At 60 °C all are thick; else they count as thin, and it is said where thick ones would not do.
        const thick = filled(piece, sizes, 'TW')
        if (point.insulation === '60 °C') return thick
        const thin = filled(piece, sizes, 'THWN-2')
        return thin.verdict === 'holds' && thick.verdict === 'breaks'
          ? { ...thin, message: 'conduit-fill-thin' }
          : thin
      },
    ),
  ]
}

/** The conductors of a run leave the conduit the room that it needs to be drawn and to cool. */
export const conduitFill: SupplyRule = {
  id: 'SUPPLY-15',
  title: 'Room in the conduit',
  about: 'segment',
  source: 'NEC chapter 9, tables 1, 4 and 5, as THWN-2, at 60 °C as TW',
  check: ({ survey, circuits }) =>
    survey.region === 'US'
      ? circuits.flatMap(({ segments }) =>
          segments
            .filter(({ cable }) => !cable.moulded)
            .flatMap(judge)
            .filter(
              each => each.message !== NOTHING && !(each.verdict === 'holds' && isOpen(each)),
            ),
        )
      : [],
}
