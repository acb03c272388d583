/** What the loader hands over: parsed files, nothing interpreted yet. */
export interface RawFile {
  /** path below graph-data, for fault messages */
  path: string
  data: unknown
}

export interface RawTable {
  path: string
  rows: Record<string, string>[]
}

export interface RawData {
  /** hash of all files, hex */
  version: string
  roles: RawFile
  classes: RawFile
  properties: RawFile
  clashes: RawFile
  relations: RawFile
  /** what people type: everyday words, names of other languages */
  names: RawFile
  /** terms under which the data are given out; data made by hand have none */
  terms?: RawFile
  ingredients: RawFile[]
  limits: RawFile[]
  rules: RawFile[]
  allergens: RawFile[]
  /** recipes to practise on */
  practice?: RawFile[]
  /** lessons about roles and ideas */
  lessons?: RawFile[]
  /** sentences in other languages, by language */
  languages?: Readonly<Record<string, RawFile[]>>
  tables: RawTable[]
  sources: RawTable[]
  inventory: InventoryRow[]
}

/** One name of the open inventory of cosmetic ingredients. */
export interface InventoryRow {
  id: string
  inci: string
  cas: string[]
  functions: string[]
}
