import { measurePart } from './part.ts'

measurePart(0)
