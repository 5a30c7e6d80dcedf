import type { FeedWay } from '@tubwright/core'
import type { Words } from '@tubwright/words'
import { say } from '@tubwright/words'

/** What can be done about a feed, and whether it does. */
export function wayText(
  { kind, outcome, isDisputed, against, besides, ...figures }: FeedWay,
  words: Words,
): string {
  const { supplyPage } = words
  const titles: Readonly<Record<string, string>> = words.supplyRules
  const told = say(supplyPage[kind], { ...numbered(figures) })
  const named = (rules: readonly string[]) => rules.map(each => titles[each] ?? each).join(', ')
  const done = say(isDisputed ? supplyPage['way-differs'] : supplyPage[`way-${outcome}`], {
    against: named(against),
  })
  const rest =
    besides.length > 0 ? ` ${say(supplyPage['way-besides'], { besides: named(besides) })}` : ''
  return `${told} ${done}${rest}`
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
