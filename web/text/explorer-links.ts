export { explorerLinks } from './en-explorer-links.ts'
