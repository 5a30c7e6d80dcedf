import { spawn } from 'node:child_process'

type Command = readonly [program: string, ...args: string[]]

/** What opens an address on this system; undefined where nobody would see it. */
function openerOf(url: string, env: NodeJS.ProcessEnv): Command | undefined {
  if (env['CI']) return undefined
  if (process.platform === 'darwin') return ['open', url]
  if (process.platform === 'win32') return ['rundll32', 'url.dll,FileProtocolHandler', url]
  return env['DISPLAY'] || env['WAYLAND_DISPLAY'] ? ['xdg-open', url] : undefined
}

/** Opens the address in the person's browser if there is one; it is no matter if there is none. */
export function openBrowser(url: string, env: NodeJS.ProcessEnv): void {
  const [program, ...args] = openerOf(url, env) ?? []
  if (program === undefined) return
  const child = spawn(program, args, { stdio: 'ignore', detached: true })
  child.on('error', () => undefined)
  child.unref()
}
