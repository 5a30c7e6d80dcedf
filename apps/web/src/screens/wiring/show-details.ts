/**
 * Brings the details of what was chosen in a table into sight: on a desk they stand beside the drawing,
 * above the tables. On a phone they come from below by themselves.
 */
export function showDetails(): void {
  if (!matchMedia('(min-width: 60rem)').matches) return
  requestAnimationFrame(() => {
    const details = document.querySelector('#wiring-details')
    const above = document.querySelector('.bar')?.getBoundingClientRect().bottom ?? 0
    const heading = details?.querySelector('h2')?.getBoundingClientRect()
    if (heading && (heading.top < above || heading.bottom > innerHeight))
      details?.scrollIntoView({ block: 'start' })
  })
}
