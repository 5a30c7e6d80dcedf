/** Whatever JSON can say. */
export type Json =
  | null
  | boolean
  | number
  | string
  | readonly Json[]
  | { readonly [key: string]: Json }

export type JsonObject = { readonly [key: string]: Json }

export const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

export const isJsonObject = (value: Json | undefined): value is JsonObject =>
  value !== undefined && isObject(value)

/** By code units: the same on every machine and in every language setting. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
