// Imports go only left in: base < engines < domain < stages < formats, documents < apps.
const { readFileSync } = require('node:fs')

const core = 'packages/core/src/'
const pipeline = readFileSync(`${__dirname}/${core}stages/pipeline.ts`, 'utf8')
const STAGES = /STAGES = \[([^\]]*)\]/u.exec(pipeline)[1].match(/[a-z]+/gu)

const onlyLeft = [
  ['base', `^${core}(?!base/)`],
  ['engines', `^${core}(domain|stages)/`],
  ['domain', `^${core}stages/`],
].map(([layer, forbidden]) => ({
  name: `${layer}-imports-only-left`,
  severity: 'error',
  from: { path: `^${core}${layer}/` },
  to: { path: forbidden },
}))

const laterStages = STAGES.map((stage, index) => ({
  name: `${stage}-imports-only-earlier-stages`,
  severity: 'error',
  from: { path: `^${core}stages/${stage}/` },
  to: {
    path: `^${core}stages/(${[...STAGES.slice(index + 1), 'pipeline'].join('|')})`,
  },
}))

const otherStages = STAGES.map(stage => ({
  name: `${stage}-imports-artifacts-only`,
  severity: 'error',
  from: { path: `^${core}stages/${stage}/` },
  to: { path: `^${core}stages/(?!${stage}/)[a-z]+/(?!artifact\\.ts)` },
}))

module.exports = {
  forbidden: [
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    ...onlyLeft,
    ...laterStages,
    ...otherStages,
    {
      name: 'engines-know-no-other-engine',
      severity: 'error',
      from: { path: `^${core}engines/([^/]+)/` },
      to: { path: `^${core}engines/`, pathNot: `^${core}engines/$1/` },
    },
    {
      name: 'core-has-no-platform',
      severity: 'error',
      from: { path: `^${core}` },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'core-depends-on-zod-only',
      severity: 'error',
      from: { path: `^${core}` },
      to: { pathNot: [`^${core}`, 'node_modules/zod/'] },
    },
    {
      name: 'packages-never-import-apps',
      severity: 'error',
      from: { path: '^packages/' },
      to: { path: '^(apps|bench)/' },
    },
    {
      name: 'the-oracle-imports-nothing-of-ours',
      severity: 'error',
      from: { path: '^packages/core/test/oracle/' },
      to: { path: '^packages/[^/]+/src/' },
    },
    {
      name: 'the-page-has-no-node',
      severity: 'error',
      from: { path: '^apps/web/src/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'the-page-imports-only-itself-and-packages',
      severity: 'error',
      from: { path: '^apps/web/src/' },
      to: { path: '^(bench|apps)/', pathNot: '^apps/web/src/' },
    },
    {
      name: 'nothing-outside-the-page-runs-its-code',
      severity: 'error',
      from: { path: '^(bench|apps/(cli|server)|apps/web/(build|bench|test/support))/' },
      to: { path: '^apps/web/src/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'the-server-knows-no-tub',
      severity: 'error',
      from: { path: '^apps/server/' },
      to: { path: '^packages/' },
    },
    { name: 'resolvable', severity: 'error', from: {}, to: { couldNotResolve: true } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '/dist/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'default'],
      extensions: ['.ts', '.js', '.mjs', '.json'],
    },
  },
}
