/**
 * The one policy by which text becomes a script's address or markup. The page's policy forbids any
 * other way, so what is let through here is all there is to look at.
 */
interface Policy {
  readonly createScriptURL: (url: string) => string
  readonly createHTML: (markup: string) => string
}

interface Factory {
  readonly createPolicy: (name: string, rules: Policy) => Policy
}

/** What would run or fetch something, in markup that is only ever drawn. */
const ACTIVE =
  /<\s*(?:script|iframe|frame|object|embed|link|meta|base|form)\b|<[^>]*[\s"'/]on\w+\s*=|javascript:/iu

/** Markup without its texts and quoted values: what somebody's words say is not what it does. */
const skeletonOf = (markup: string): string =>
  markup
    .replace(/"[^"]*"/gu, each => (/^"\s*javascript:/iu.test(each) ? each : '""'))
    .replace(/>[^<]*</gu, '><')

const rules: Policy = {
  createScriptURL: url => {
    const asked = new URL(url, document.baseURI)
    if (asked.href.startsWith(new URL('.', document.baseURI).href)) return asked.href
    throw new TypeError(`No script is taken from ${asked.origin}.`)
  },
  createHTML: markup => {
    if (ACTIVE.test(skeletonOf(markup))) throw new TypeError('Markup that acts is not drawn.')
    return markup
  },
}

const { trustedTypes } = globalThis as { trustedTypes?: Factory }
const policy = trustedTypes?.createPolicy('tubwright', rules) ?? rules

/** The address of a script of the bundle, as workers want it. */
export const ownScript = (url: string): string => policy.createScriptURL(url)

/** Markup that `documents` has written, where a drawing is put into the page. */
export const ownMarkup = (markup: string): string => policy.createHTML(markup)
