import type { Plugin } from 'vite'
import { WEB_EN } from '../../../packages/words/src/en/web/index.ts'
import { WEB_ES } from '../../../packages/words/src/es/web/index.ts'

const PLACE = '<!-- shell -->'

const KEYS = [
  'appName',
  'shell.shelf',
  'shell.settings',
  'jobs.title',
  'jobs.new',
  'jobs.open-file',
] as const
type ShellWords = Readonly<Record<(typeof KEYS)[number], string>>

const escaped = (text: string): string =>
  text.replace(/[&<>"]/gu, each => `&#${each.codePointAt(0)};`)

/** What the first screen shows before its script is there, in the words of the app itself. */
function shellIn(language: string, words: ShellWords): string {
  const say = (key: keyof ShellWords) => escaped(words[key])
  return `<div lang="${language}">
        <header class="bar">
          <p class="name"><a href="#/">${say('appName')}</a></p>
          <div class="grow"></div>
          <nav class="row" aria-label="${say('shell.settings')}"><a class="button" href="#/shelf">${say('shell.shelf')}</a><a class="button" href="#/settings">${say('shell.settings')}</a></nav>
        </header>
        <main>
          <h1>${say('jobs.title')}</h1>
          <p class="row"><span class="button main">${say('jobs.new')}</span><span class="button">${say('jobs.open-file')}</span></p>
        </main>
      </div>`
}

/** Writes the shell in every language into the page; `first-paint.js` says which is seen. */
export function writeShell(): Plugin {
  const shells = [shellIn('en', WEB_EN), shellIn('es', WEB_ES)].join('\n      ')
  return {
    name: 'tubwright-write-shell',
    transformIndexHtml: page => page.replace(PLACE, () => shells),
  }
}
