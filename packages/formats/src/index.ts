export * from './documents.ts'
export * from './located.ts'
export * from './read-yaml.ts'
export * from './wire-form.ts'
