import { useMemo } from 'react'
import type { OfSupply } from '../../ask/protocol.ts'
import { useTaken } from '../wiring/use-landing.ts'

/** The box of the plan that was taken, as it is set; none where two people took different ones. */
export function useTakenBox(): Pick<OfSupply, 'taken'> {
  const taken = useTaken()
  return useMemo(
    () =>
      taken && !taken.isContested ? { taken: { box: taken.box, landing: taken.landing } } : {},
    [taken],
  )
}
