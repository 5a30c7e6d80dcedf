// English by its names stands here too; a bundler leaves it out where nothing asks for it.
export * from './en/index.ts'
export * from './say.ts'
export type {
  Language,
  LinedTable,
  Review,
  Table,
  TableName,
  Tables,
  Tellers,
  ToldChange,
  Words,
} from './words.ts'
