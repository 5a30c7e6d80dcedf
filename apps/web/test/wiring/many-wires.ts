import type { Page } from 'playwright-core'

/**
 * Lets the page see a board with so many conductors as no invented tub has: the answers of the core
 * are stretched on their way, every wire copied beside its board until there are enough.
 */
export async function withManyWires(page: Page, count: number): Promise<void> {
  await page.addInitScript((wanted: number) => {
    type Wire = { number: number; id: string; ends: { end: string }[] }
    type Answer = {
      drawings?: Record<string, string>
      sheet?: { wires: { wires: Wire[] }[] }
      landing?: { ends: Record<string, string> }
      ends?: Record<string, unknown>
      places?: Record<string, unknown>
    }
    const copied = (text: string, by: number, copy: number): string =>
      text
        .replace(
          /data-(wire|of)="(\d+)"/gu,
          (_, name, n) => `data-${name}="${Number(n) + 100 * copy}"`,
        )
        .replace(/data-end="([^"]+)"/gu, `data-end="$1~${copy}"`)
        .replace(/([ML])(-?[\d.]+) /gu, (_, c, x) => `${c}${Number(x) + by} `)
        .replace(/ (x|cx)="(-?[\d.]+)"/gu, (all, name, x) =>
          all.includes('transform') ? all : ` ${name}="${Number(x) + by}"`,
        )
    const stretchDrawing = (svg: string, copies: number): string => {
      const [, , width = 186, height = 200] = (/viewBox="([^"]+)"/u.exec(svg)?.[1] ?? '')
        .split(' ')
        .map(Number)
      const [head = '', ...lines] = svg.replace(/<\/svg>$/u, '').split('\n')
      const kept = lines.filter(each => /^<g class="wire"|^<g data-terminal|^<text/u.test(each))
      const copiesOf = Array.from({ length: copies - 1 }, (_, index) =>
        kept
          .filter(each => !each.includes('rotate'))
          .map(each => copied(each, (index + 1) * width, index + 1)),
      ).flat()
      const wide = head
        .replace(/viewBox="[^"]+"/u, `viewBox="0 0 ${width * copies} ${height}"`)
        .replace(/width="[^"]+mm"/u, `width="${width * copies}mm"`)
      return [wide, ...lines, ...copiesOf, '</svg>'].join('\n')
    }
    const stretch = (answer: Answer): void => {
      const box = answer.drawings?.['box']
      if (answer.sheet && answer.drawings && box) {
        const here = (box.match(/class="wire"/gu) ?? []).length
        const copies = Math.ceil(wanted / here)
        answer.drawings['box'] = stretchDrawing(box, copies)
        for (const group of answer.sheet.wires)
          group.wires = group.wires.flatMap(wire =>
            Array.from({ length: copies }, (_, copy) =>
              copy === 0
                ? wire
                : {
                    ...wire,
                    number: wire.number + 100 * copy,
                    id: `${wire.id}~${copy}`,
                    ends: wire.ends.map(each => ({ ...each, end: `${each.end}~${copy}` })),
                  },
            ),
          )
      }
      if (answer.ends && !answer.landing)
        for (const [id, point] of Object.entries(answer.ends))
          for (let copy = 1; copy < 20; copy++) answer.ends[`${id}~${copy}`] = point
    }
    const Own = window.Worker
    window.Worker = class extends Own {
      override set onmessage(listener: ((event: MessageEvent) => void) | null) {
        super.onmessage = event => {
          const { data } = event as MessageEvent<{ kind: string; answers?: Answer }>
          if (data.kind === 'answer' && data.answers) stretch(data.answers)
          listener?.(event)
        }
      }
    }
  }, count)
}
