import type { Printed } from '../printed.ts'

export const PRINTED: Printed = {
  standard: 'AS/NZS 3000',
  edition: '2018',
  clause: '3.6.2',
  read: 'page',
}

/**
 * Greatest drop from the point of supply to any point [% of nominal]; more where a substation of
 * its own stands on the site.
 *
 * @source [ASNZS3000-3.6] 3.6.2
 */
export const DROP_PERCENT = { network: 5, 'own substation': 7 } as const
