import type { ControlBox } from '@tubwright/core'

/** Numbers from 0 to 1 by a linear congruence, the same on every machine. */
function randomFrom(seed: number): () => number {
  let value = seed >>> 0
  return () => {
    value = (Math.imul(value, 1_664_525) + 1_013_904_223) >>> 0
    return value / 2 ** 32
  }
}

type Amps = ControlBox['largestBreaker']
const amps = (value: number): Amps => ({ si: value as Amps['si'], text: `${value} A` })

/** A box like another one but for what a maker varies: ratings, limits, size, regions, places, curves. */
function varied(box: ControlBox, id: string, random: () => number): ControlBox {
  const pick = <Value>(of: readonly Value[]): Value => of[Math.floor(random() * of.length)] as Value
  const motor = pick([8, 10, 12, 16])
  const scale = pick([0.8, 1, 1, 1.2, 1.6])
  const without = pick(['', '', '', 'circulation-pump', 'ozonator', 'blower'])
  const regions = pick([box.regions, box.regions, box.regions, ['AU' as const]])
  const parts = box.board.parts.map(part =>
    part.kind === 'contact' && part.rated.motor
      ? { ...part, rated: { ...part.rated, motor: amps(motor) } }
      : part,
  )
  const sized = ({ si, text }: ControlBox['size']['width']): ControlBox['size']['width'] => ({
    si: (si * scale) as ControlBox['size']['width']['si'],
    text,
  })
  const offered = box.currentLimit.offered.filter((_, index) => index === 0 || random() < 0.8)
  return {
    ...box,
    id,
    label: `Box ${id}`,
    regions,
    size: { width: sized(box.size.width), height: sized(box.size.height), depth: box.size.depth },
    board: { ...box.board, parts },
    places: box.places.map(place =>
      place.takes.some(kind => kind === without) ? { ...place, takes: ['light'] } : place,
    ),
    currentLimit: { ...box.currentLimit, offered },
  }
}

/**
 * So many boxes, each a demo box with other ratings, limits, sizes, regions and places.
 *
 * @param seed - the same seed gives the same boxes
 */
export function generateBoxes(
  models: readonly ControlBox[],
  count: number,
  seed: number,
): readonly ControlBox[] {
  const random = randomFrom(seed)
  return Array.from({ length: count }, (_, index) => {
    const model = models[Math.floor(random() * models.length)]
    if (!model) throw new Error('no box to start from')
    return varied(model, `generated-${index}`, random)
  })
}
