// Before anything is painted: the language and the light that were chosen here. A dark cabinet is not
// to be lit up by every start. The app itself reads the same in src/app/start.ts.
{
  const root = document.documentElement
  let kept = {}
  try {
    kept = JSON.parse(localStorage.getItem('tubwright-habits') ?? '{}') ?? {}
  } catch {
    // Nothing is remembered: then as the browser has it.
  }
  const dark = matchMedia('(prefers-color-scheme: dark)').matches
  const one = (value, of, otherwise) => (of.includes(value) ? value : otherwise)
  root.lang = one(kept.language, ['en', 'es'], navigator.language.startsWith('es') ? 'es' : 'en')
  root.dataset.scheme = one(kept.scheme, ['sun', 'shade'], dark ? 'shade' : 'sun')
  root.dataset.first = /^#?\/?$/.test(location.hash) ? 'jobs' : 'other'

  // The shell stands until the app shows something, and goes within the same frame.
  new MutationObserver((_, observer) => {
    if (!document.querySelector('#app > *')) return
    document.getElementById('shell')?.remove()
    observer.disconnect()
  }).observe(root, { childList: true, subtree: true })
}
