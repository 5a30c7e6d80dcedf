import type { Space } from './database.ts'

/** What the thread that keeps the copy can be asked, and what each answers. */
export interface CopyQuestions {
  readonly append: { asks: { job: string; lines: readonly string[] }; answers: undefined }
  readonly read: { asks: { job: string }; answers: readonly string[] }
  readonly list: { asks: { holds: 'jobs' | 'photos' }; answers: readonly string[] }
  readonly 'keep-photo': { asks: { name: string; bytes: Uint8Array }; answers: undefined }
  readonly 'read-photo': { asks: { name: string }; answers: Uint8Array }
  readonly release: { asks: object; answers: undefined }
  readonly wipe: { asks: object; answers: undefined }
}
export type CopyQuestion = keyof CopyQuestions

export type CopyAsked = {
  [Asked in CopyQuestion]: {
    readonly id: number
    readonly space: Space
    readonly ask: Asked
  } & Readonly<CopyQuestions[Asked]['asks']>
}[CopyQuestion]
export type CopyAnswer = CopyQuestions[CopyQuestion]['answers']
export type CopyReply =
  | { readonly id: number; readonly answer: CopyAnswer }
  | { readonly id: number; readonly failure: string }
