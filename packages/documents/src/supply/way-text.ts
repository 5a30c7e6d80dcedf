import type { FeedWay } from '@tubwright/core'
import type { Words } from '@tubwright/words'
import { say } from '@tubwright/words'

/** What can be done about a feed, and whether it does. */
export function wayText({ kind, outcome, against, ...figures }: FeedWay, words: Words): string {
  const { supplyPage } = words
  const titles: Readonly<Record<string, string>> = words.supplyRules
  const told = say(supplyPage[kind], { ...numbered(figures) })
  const done = say(supplyPage[`way-${outcome}`], {
    against: against.map(each => titles[each] ?? each).join(', '),
  })
  return `${told} ${done}`
}

const numbered = ({
  breaker,
  limit,
  size,
}: Pick<FeedWay, 'breaker' | 'limit' | 'size'>): Readonly<Record<string, string | number>> => ({
  ...(breaker === undefined ? {} : { breaker }),
  ...(limit === undefined ? {} : { limit }),
  ...(size === undefined ? {} : { size }),
})
