import { test } from 'vitest'
import { compileNetwork } from '../../../src/engines/circuit/compile-network.ts'
import { solveNetwork, solveInto, currentAt } from '../../../src/engines/circuit/solve-network.ts'
import { makeWorkspace } from '../../../src/engines/circuit/workspace.ts'
test('x', () => {
  let seed = 12345
  const rnd = () => (seed = (seed * 1103515245 + 12345) & 0x7fffffff) / 0x7fffffff
  const elements: any[] = []
  const N = 40
  elements.push({ kind: 'source', id: 's1', between: ['n1', 'n0'], volts: {re:120,im:0}, ohms: {re:0.025,im:0} })
  elements.push({ kind: 'source', id: 's2', between: ['n2', 'n0'], volts: {re:-120,im:0}, ohms: {re:0.025,im:0} })
  for (let i = 3; i < N; i++) elements.push({ kind: 'contact', id: 'c'+i, between: ['n'+Math.max(0,i-1-Math.floor(rnd()*4)), 'n'+i], closedOhms: 0.002, openOhms: 1e9, closed: rnd()<.7 })
  while (elements.length < 61) { const a=Math.floor(rnd()*N), b=Math.max(0,Math.min(N-1,a+1+Math.floor(rnd()*6)));if(a!==b)elements.push({ kind:'impedance', id:'z'+elements.length, between:['n'+a,'n'+b], ohms:{re: rnd()<.5?20:20e6, im: 5}}) }
  const network = { hertz: 60, reference: 'n0', elements } as any
  for (const opt of [{}, {route:'pivoted-lu'}] as any) {
    const c = compileNetwork(network, opt); if (!c.ok) throw new Error(JSON.stringify(c))
    const w = makeWorkspace(c.value)
    const states = new Uint8Array(c.value.contacts.length).fill(1)
    const K = opt.route ? 2000 : 200000
    for (let r = 0; r < 3; r++) {
    const t = process.hrtime.bigint()
    for (let k = 0; k < K; k++) { states[k % 30] ^= 1; solveInto(c.value, states, w) }
    console.log(c.value.route, c.value.mesh?.elimination.steps.length, Number(process.hrtime.bigint() - t) / K / 1000, 'us')
    }
    let t = process.hrtime.bigint()
    for (let k = 0; k < 2000; k++) { solveNetwork(c.value, undefined) }
    console.log('solveNetwork', Number(process.hrtime.bigint() - t) / 2000 / 1000, 'us')
    t = process.hrtime.bigint()
    for (let k = 0; k < 20000; k++) for (let e=0;e<61;e++) currentAt(c.value, w, e)
    console.log('61 currents', Number(process.hrtime.bigint() - t) / 20000 / 1000, 'us')
    t = process.hrtime.bigint()
    for (let k = 0; k < 1000; k++) compileNetwork(network, opt)
    console.log('compile', Number(process.hrtime.bigint() - t) / 1000 / 1000, 'us')
  }
})
