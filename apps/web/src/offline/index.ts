export { ownMarkup, ownScript } from './trusted.ts'
export { holdUpdates, isUpdateWaiting, onUpdates, startOffline } from './updates.ts'
