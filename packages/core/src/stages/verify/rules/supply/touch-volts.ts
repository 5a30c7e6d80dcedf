import { atMost } from '../../../../base/compare.ts'
import { choiceOf } from '../../../../base/possible.ts'
import { YES_NO } from '../../../../domain/described.ts'
import type { Touch } from '../../../../domain/supply/readings.ts'
import { COMMON_PRACTICE } from '../../rule.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { conclude, fact } from '../../supply/rule.ts'

/** Between water or metal and true ground [V]: from here on somebody has to look, from there on nobody goes in. */
const WARN = 2 // common practice, no source
const STOP = 5 // common practice, no source

/** Where nobody said so, nothing was unplugged. */
const NO_FIRST = [...YES_NO].reverse()

type Reading = NonNullable<Touch['readings']>[number]

function judgeReading({ volts: { si: is }, to }: Reading, isUnplugged: boolean): PointFinding {
  const params = { is, may: WARN }
  // One piece of metal has no volts along it: where it has, it is not one piece.
  if (to === 'tub-earth' && atMost(is, WARN))
    return fact(false, { message: 'touch-same-metal', params })
  if (atMost(is, WARN)) return fact(true, { message: 'touch-volts', params })
  return fact(false, {
    message: isUnplugged ? 'touch-from-outside' : 'touch-volts',
    params: { is, may: atMost(is, STOP) ? WARN : STOP },
    severity: atMost(is, STOP) ? 'warning' : 'danger',
  })
}

const judge = (reading: Reading): CodeFinding =>
  conclude(
    {
      rule: touchVolts.id,
      subjects: [reading.id],
      severity: 'caution',
      params: { from: reading.from, to: reading.to },
    },
    {
      unplugged: choiceOf(reading.unplugged, NO_FIRST, `touch.readings.${reading.id}.unplugged`),
    },
    point => judgeReading(reading, point.unplugged === 'yes'),
  )

/** Nobody is given volts between the water and the ground; whoever felt a tingle was right. */
export const touchVolts: SupplyRule = {
  id: 'SUPPLY-17',
  title: 'No volts to touch',
  about: 'yard',
  source: COMMON_PRACTICE,
  check: ({ survey: { touch } }) => {
    const felt = touch?.felt
    const shock =
      felt?.kind === 'known'
        ? [
            conclude({ rule: touchVolts.id, subjects: ['touch'], severity: 'danger' }, {}, () =>
              fact(felt.value === 'no', { message: 'touch-felt' }),
            ),
          ]
        : []
    return [
      ...shock.filter(each => each.verdict !== 'holds'),
      ...(touch?.readings ?? []).map(judge),
    ]
  },
}
