import { COMMON_PRACTICE } from '../../rule.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, fact } from '../../supply/rule.ts'

/** A conductor is the same at both its ends; where it is not, there is a joint that nobody sees. */
export const hiddenJoint: SupplyRule = {
  id: 'SUPPLY-8',
  title: 'The same conductor at both ends',
  about: 'segment',
  source: COMMON_PRACTICE,
  check: ({ circuits }) =>
    circuits.flatMap(({ segments }) =>
      segments.flatMap(({ cable }) =>
        cable.conductors.flatMap(({ id, size, colour, otherEnd }) => {
          if (!otherEnd) return []
          const there = { size: otherEnd.size ?? size, colour: otherEnd.colour ?? colour }
          const isSame = there.size.text === size.text && there.colour === colour
          const params = {
            cable: cable.label,
            conductor: id,
            size: size.text,
            colour,
            otherSize: there.size.text,
            otherColour: there.colour,
          }
          return [
            conclude(
              {
                rule: hiddenJoint.id,
                subjects: [cable.id],
                topic: id,
                severity: 'warning',
                params,
              },
              {},
              () => fact(isSame, { message: 'hidden-joint' }),
            ),
          ]
        }),
      ),
    ),
}
