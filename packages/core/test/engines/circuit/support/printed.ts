/** Where an expected figure comes from. */
export interface Printed {
  readonly id: string
  /** `page`: read there. `derived`: our arithmetic from its rule, so a regression value only. */
  readonly found: 'page' | 'derived'
  /** Why this case. */
  readonly why: string
}

export const titleOf = ({ id, found, why }: Printed): string => `[${found}] ${id}: ${why}`
